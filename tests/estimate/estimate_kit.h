// What the tests of the estimate share: the starter catalogue, takeoffs made by hand.
#pragma once

#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <vector>

#include "estimate/estimate.h"

namespace estimate_kit {

// The starter catalogue as the program reads it (invented prices).
const catalogue::Catalogue& starter();

// A job without elements that owns this catalogue.
plan::Job job_with(catalogue::Catalogue book);
plan::Job starter_job();

// A paved area laid with these units, size by size; its shape does not matter to an estimate.
plan::Element area_laid_with(const std::string& id, const std::map<std::string, std::string>& units);

takeoff::Working amount(double value, units::Unit unit);
takeoff::Line line(takeoff::Stage stage, const std::string& item, takeoff::Working working,
                   std::vector<std::string> of = {"A1"});
takeoff::Takeoff takeoff_of(std::vector<takeoff::Line> lines, std::vector<takeoff::Task> tasks = {});

// The order line of an item; fails the test where there is none, or more than one.
const estimate::OrderLine& line_of(const estimate::Estimate& made, const std::string& item);
bool has_line(const estimate::Estimate& made, const std::string& item);
const problem::Problem* said(const estimate::Estimate& made, const std::string& code);
std::int64_t coins(const estimate::OrderLine& line);  // -1 where it has no amount

}  // namespace estimate_kit
