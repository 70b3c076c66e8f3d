#pragma once

#include "core/plan/pest_course.h"

#include <span>
#include <string>
#include <vector>

namespace lathhouse::words {

/// A pest's name as it stands within a sentence: German writes its nouns with capitals, English does not.
std::string pest_name(const plants::Pest* pest);
/// "citrus mealybug found on 3 March", "stood beside Jade on 3 March" ...
std::string why(const plan::PlantCondition& condition, const home::Household& household);
/// What a step asks for, without its date: "look it over: leaf axils, undersides ..."
std::string step(const plan::CourseStep& step);
/// Why a course ends when it does, in whole sentences.
std::vector<std::string> course_ends(const plan::Course& course);
/// The same, with a line end each.
std::string course_end(const plan::Course& course);
/// Where a plant is to stand and until when, one sentence.
std::string isolation(const plan::IsolationNeed& need, const home::Household& household);
std::string course_remark(const plan::CourseRemark& remark, const home::Household& household);
/// What to look for and what helps, without full stops, and how long a generation takes.
std::vector<std::string> pest_lines(const plants::Pest& pest);
/// Its name; what to look for and how long a generation takes at 15, 20 and 25 C by each study; several lines.
std::string pest_card(const plants::Pest& pest);
/// In what order plants are visited, and what comes first.
std::string course_hygiene();
/// Keys of the sources of the courses, and of a pest that was asked for.
std::vector<std::string> course_sources(std::span<const plan::Course> courses, const plants::Pest* asked);
/// "walks, hands".
std::string listed(const std::vector<std::string>& words);

} // namespace lathhouse::words
