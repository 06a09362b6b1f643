"""Validates job files against the schema: schema_test.py SCHEMA VALID_FOLDER INVALID_FOLDER.

Every file of the first folder must be valid and every one of the second must not be. Exit 0 when that is so.
"""
import json
import pathlib
import sys

import jsonschema

schema = json.loads(pathlib.Path(sys.argv[1]).read_text(encoding="utf-8"))
jsonschema.Draft202012Validator.check_schema(schema)
validator = jsonschema.Draft202012Validator(schema)
wrong = 0
for folder, expected in ((sys.argv[2], True), (sys.argv[3], False)):
    files = sorted(pathlib.Path(folder).glob("*.json"))
    if not files:
        print(f"{folder} holds no job file")
        wrong += 1
    for file in files:
        faults = list(validator.iter_errors(json.loads(file.read_text(encoding="utf-8"))))
        if (not faults) != expected:
            wrong += 1
            print(f"{file}: {faults[0].message[:300] if faults else 'is valid, and should not be'}")
sys.exit(1 if wrong else 0)
