#pragma once

#include "core/plan/pest_course.h"

#include <string>

namespace lathhouse::words {

/// "citrus mealybug found on 3 March", "stood beside Jade on 3 March" ...
std::string why(const plan::PlantCondition& condition, const home::Household& household);
/// What a step asks for, without its date: "look it over: leaf axils, undersides ..."
std::string step(const plan::CourseStep& step);
/// Why a course ends when it does, in whole sentences with a line end each.
std::string course_end(const plan::Course& course);
/// Where a plant is to stand and until when, one sentence.
std::string isolation(const plan::IsolationNeed& need, const home::Household& household);
std::string course_remark(const plan::CourseRemark& remark, const home::Household& household);
/// What to look for and how long a generation takes at 15, 20 and 25 C by each study; several lines.
std::string pest_card(const plants::Pest& pest);
/// "walks, hands".
std::string listed(const std::vector<std::string>& words);

} // namespace lathhouse::words
