# Writes OUT: a C++ source that holds every catalogue/*.csv and patterns/*.json under ROOT as bytes.
# Bytes, because string literals have limits (64 KB in some compilers) and would need every quote and line end escaped.
file(GLOB paths RELATIVE ${ROOT} ${ROOT}/catalogue/*.csv ${ROOT}/patterns/*.json)
list(SORT paths)
set(arrays "")
set(table "")
set(n 0)
foreach(path IN LISTS paths)
  file(READ ${ROOT}/${path} hex HEX)
  string(LENGTH "${hex}" digits)
  math(EXPR size "${digits} / 2")
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${hex}")
  string(REGEX REPLACE "(....,....,....,....,....,....,....,....,....,....,....,....,....,....,....,....,)" "\\1\n" bytes "${bytes}")
  string(APPEND arrays "constexpr unsigned char text_${n}[] = {\n${bytes}0x00};\n")
  string(APPEND table "    {\"${path}\", text_${n}, ${size}},\n")
  math(EXPR n "${n} + 1")
endforeach()
file(WRITE ${OUT} "#include \"store/starter_bytes.h\"\n\nnamespace store {\n\nnamespace {\n${arrays}}  // namespace\n
const std::vector<StarterFile>& starter_files() {
  static const std::vector<StarterFile> files{\n${table}  };\n  return files;\n}\n\n}  // namespace store\n")
