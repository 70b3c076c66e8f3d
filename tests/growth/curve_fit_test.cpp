#include "core/growth/curve_fit.h"

#include "core/base/csv.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace lathhouse::growth {
namespace {

using Values = std::span<const double>;

/// A data set of NIST.
struct Certified {
    std::vector<double> start1;
    std::vector<double> start2;
    std::vector<double> parameters;
    std::vector<double> deviations;
    double squares = 0.0;
    std::vector<Point> points;
};

std::map<std::string, Certified> certified()
{
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/growth/nist_curves.csv");
    EXPECT_TRUE(table.has_value()) << table.error().message;
    std::map<std::string, Certified> sets;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        auto& set = sets[table->at(row, 0)];
        const auto what = table->at(row, 1);
        const double first = **table->number(row, 2);
        if (what == "point") {
            set.points.push_back({**table->number(row, 3), first});
        } else if (what == "squares") {
            set.squares = first;
        } else {
            (what == "start1"      ? set.start1
             : what == "start2"    ? set.start2
             : what == "certified" ? set.parameters
                                   : set.deviations)
                .push_back(first);
        }
    }
    return sets;
}

const std::map<std::string, CurveModel>& models()
{
    static const std::map<std::string, CurveModel> all{
        {"BoxBOD", [](double x, Values b) { return b[0] * (1.0 - std::exp(-b[1] * x)); }},
        {"Chwirut2", [](double x, Values b) { return std::exp(-b[0] * x) / (b[1] + b[2] * x); }},
        {"DanWood", [](double x, Values b) { return b[0] * std::pow(x, b[1]); }},
        {"MGH09", [](double x, Values b) { return b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]); }},
        {"Misra1a", [](double x, Values b) { return b[0] * (1.0 - std::exp(-b[1] * x)); }},
        {"Misra1b", [](double x, Values b) { return b[0] * (1.0 - std::pow(1.0 + b[1] * x / 2.0, -2.0)); }},
        {"Rat42", [](double x, Values b) { return b[0] / (1.0 + std::exp(b[1] - b[2] * x)); }},
        {"Rat43",
         [](double x, Values b) { return b[0] / std::pow(1.0 + std::exp(b[1] - b[2] * x), 1.0 / b[3]); }},
        {"Thurber", [](double x, Values b) {
             return (b[0] + b[1] * x + b[2] * x * x + b[3] * x * x * x) /
                    (1.0 + b[4] * x + b[5] * x * x + b[6] * x * x * x);
         }}};
    return all;
}

void expect_certified(const Certified& set, const CurveFit& fit, const std::string& name)
{
    EXPECT_NEAR(fit.residual_squares / set.squares, 1.0, 1e-6) << name;
    for (std::size_t at = 0; at < set.parameters.size(); ++at) {
        EXPECT_NEAR(fit.parameters[at] / set.parameters[at], 1.0, 1e-6) << name << " b" << at + 1;
        EXPECT_NEAR(fit.errors[at] / set.deviations[at], 1.0, 1e-4) << name << " b" << at + 1;
    }
}

// The second start of each set is the nearer one. From the far one, too, no wrong answer may come out: it is found or
// refused.
TEST(CurveFit, HasTheCertifiedValuesOfNist)
{
    const auto sets = certified();
    ASSERT_EQ(sets.size(), models().size());
    for (const auto& [name, set] : sets) {
        const auto fit = fit_curve(set.points, models().at(name), set.start2);
        ASSERT_TRUE(fit.has_value()) << name << ": " << fit.error().message;
        expect_certified(set, *fit, name);
    }
}

TEST(CurveFit, FindsTheSameFromFarOrSaysThatItCannot)
{
    int found = 0;
    for (const auto& [name, set] : certified()) {
        if (const auto fit = fit_curve(set.points, models().at(name), set.start1)) {
            ++found;
            expect_certified(set, *fit, name);
        } else {
            EXPECT_EQ(fit.error().code, ErrorCode::OutOfRange) << name;
        }
    }
    EXPECT_GE(found, 7);
}

TEST(CurveFit, DrawsTheCertifiedStraightLine)
{
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/climate/nist_norris.csv");
    ASSERT_TRUE(table.has_value());
    const auto y = table->require_column("y");
    const auto x = table->require_column("x");
    ASSERT_TRUE(y.has_value() && x.has_value());
    std::vector<Point> points;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        points.push_back({**table->number(row, *x), **table->number(row, *y)});
    }
    const auto fit = fit_curve(
        points, [](double at, Values b) { return b[0] + b[1] * at; }, std::vector{1.0, 0.5});
    ASSERT_TRUE(fit.has_value());
    EXPECT_NEAR(fit->parameters[0], -0.262323073774029, 1e-8);
    EXPECT_NEAR(fit->parameters[1], 1.00211681802045, 1e-10);
    EXPECT_NEAR(fit->errors[0], 0.232818234301152, 1e-6);
    EXPECT_NEAR(fit->errors[1], 0.429796848199937e-3, 1e-9);
}

// Data sets of R (GPL-2; figures), fits by R 4.2.2's nls with SSlogis and SSgompertz.
const std::vector<Point> kChick{{0, 42},   {2, 51},   {4, 59},   {6, 64},   {8, 76},   {10, 93},
                                {12, 106}, {14, 125}, {16, 149}, {18, 171}, {20, 199}, {21, 205}};
const std::vector<Point> kOrange{{118, 30}, {484, 58}, {664, 87}, {1004, 115}, {1231, 120}, {1372, 142}, {1582, 145}};

std::vector<Point> dnase()
{
    const double conc[] = {0.04882812, 0.1953125, 0.390625, 0.78125, 1.5625, 3.125, 6.25, 12.5};
    const double density[] = {0.017, 0.018, 0.121, 0.124, 0.206, 0.215, 0.377, 0.374,
                              0.614, 0.609, 1.019, 1.001, 1.334, 1.364, 1.730, 1.710};
    std::vector<Point> points;
    for (std::size_t at = 0; at < 16; ++at) {
        points.push_back({std::log(conc[at / 2]), density[at]});
    }
    return points;
}

void expect_fit(const Result<CurveFit>& fit, const std::vector<double>& parameters,
                const std::vector<double>& errors, double squares)
{
    ASSERT_TRUE(fit.has_value()) << fit.error().message;
    for (std::size_t at = 0; at < parameters.size(); ++at) {
        // nls stops at a relative offset of 1e-5, which leaves that much of what the points hardly determine.
        EXPECT_NEAR(fit->parameters[at] / parameters[at], 1.0, 3e-5) << at;
        EXPECT_NEAR(fit->errors[at] / errors[at], 1.0, 1e-3) << at;
    }
    EXPECT_NEAR(fit->residual_squares / squares, 1.0, 1e-6);
    EXPECT_LE(fit->residual_squares, squares * (1.0 + 1e-9)) << "no worse a fit than theirs";
}

TEST(LogisticCurve, IsThatOfR)
{
    expect_fit(fit_logistic(kChick), {937.03010595, 35.22296241, 11.40520855},
               {465.8678171, 8.3120251222, 0.9052461351}, 76.66235626);
    expect_fit(fit_logistic(kOrange), {154.1631709, 627.1940348, 362.5724223},
               {11.33184135, 77.43400165, 67.69163505}, 176.9948617);
    expect_fit(fit_logistic(dnase()), {2.345181571, 1.483091725, 1.041455476},
               {0.07815409701, 0.08135332596, 0.03227082035}, 0.00478956897);
}

TEST(GompertzCurve, IsThatOfR)
{
    expect_fit(fit_gompertz(dnase()), {4.6033338313, 2.2713390735, 0.7164665851},
               {0.6532086809, 0.14372663157, 0.02206195905}, 0.009361637668);
}

TEST(CurveFit, RefusesTooFewPointsAndNoShape)
{
    const std::vector<Point> few{{0, 1}, {1, 2}, {2, 3}};
    EXPECT_EQ(fit_logistic(few).error().code, ErrorCode::WrongUsage);
    const std::vector<Point> same{{1, 1}, {1, 2}, {1, 3}, {1, 4}, {1, 5}};
    EXPECT_FALSE(fit_logistic(same).has_value());
}

TEST(CurveFit, NeedsAPointMoreThanParameters)
{
    const CurveModel straight = [](double x, Values at) { return at[0] + at[1] * x; };
    const std::vector<Point> two{{0.0, 1.0}, {1.0, 2.0}};
    const auto fit = fit_curve(two, straight, std::vector{0.0, 1.0});
    ASSERT_FALSE(fit);
    EXPECT_EQ(fit.error().code, ErrorCode::WrongUsage);
    EXPECT_NE(fit.error().message.find("needs 3 points, has 2"), std::string::npos);
}

} // namespace
} // namespace lathhouse::growth
