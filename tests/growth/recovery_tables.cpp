// Prints the tables of docs/methods/growth-and-recovery.md and writes its picture.
// recovery_tables SERIES [FILE.svg]: SERIES simulated plants a row (the tables in the docs: 1000).
#include "tests/growth/simulated_series.h"

#include "core/base/csv.h"
#include "core/base/parse.h"

#include <cstdio>
#include <iostream>
#include <sstream>

namespace lathhouse::growth {
namespace {

constexpr std::uint64_t kSeed = 77001; // Apart from those of the tests.

std::string percent(double share)
{
    char text[16];
    std::snprintf(text, sizeof text, "%.1f", 100.0 * share);
    return text;
}

void false_news(int series)
{
    std::cout << "False good news, %: ever, at a last look, at the worst look; holding or declining ever\n";
    const Recipe fifth{.name = "a fifth of the rate", .share = 0.2};
    auto wander1 = fifth;
    wander1.name = "  slow deviations of 1 %";
    wander1.wander = 0.01;
    auto wander2 = fifth;
    wander2.name = "  slow deviations of 2 %";
    wander2.wander = 0.02;
    auto wild = fifth;
    wild.name = "  6 % misread";
    wild.misread = 0.06;
    auto clean = fifth;
    clean.name = "  none misread";
    clean.misread = 0.0;
    auto three = fifth;
    three.name = "  3 readings before";
    three.before_high = 3;
    auto noisy = fifth;
    noisy.name = "  noise of 3 %";
    noisy.noise_low = 0.03;
    auto counts = fifth;
    counts.name = "  counts";
    counts.kind = SeriesKind::Count;
    auto shares = fifth;
    shares.name = "  shares";
    shares.kind = SeriesKind::Share;
    auto mixed = fifth;
    mixed.name = "between shrinking and a fifth";
    mixed.share = -0.5;
    mixed.share_highest = 0.2;
    auto standing = wander2;
    standing.name = "standing, slow deviations of 2 %";
    standing.share = 0.0;
    for (const auto& recipe : {fifth, clean, wild, wander1, wander2, noisy, three, counts, shares, mixed, standing}) {
        const auto of = tally(recipe, series, kSeed);
        std::cout << "| " << recipe.name << " | " << percent(of.of_all(of.good_ever)) << " | "
                  << percent(of.of_all(of.good_last)) << " | " << percent(of.worst_good()) << " |\n";
    }
}

void verdicts(int series)
{
    std::cout << "Verdicts, %: too early / no setback / recovered / recovering / holding / declining\n";
    std::vector<Recipe> recipes;
    for (const auto& [name, share] :
         {std::pair{"full", 1.0}, {"half", 0.5}, {"a fifth", 0.2}, {"standing", 0.0}, {"shrinking at half", -0.5}}) {
        recipes.push_back({.name = name, .share = share});
    }
    recipes.push_back({.name = "no event", .event = false});
    recipes.push_back({.name = "no event, counts", .kind = SeriesKind::Count, .event = false});
    recipes.push_back({.name = "no event, shares", .kind = SeriesKind::Share, .event = false});
    recipes.push_back({.name = "full, counts", .kind = SeriesKind::Count});
    recipes.push_back({.name = "full, shares", .kind = SeriesKind::Share});
    recipes.push_back({.name = "no event, slows by itself", .event = false, .logistic = true});
    recipes.push_back({.name = "full, slows by itself", .logistic = true});
    for (const auto& recipe : recipes) {
        const auto of = tally(recipe, series, kSeed + 1);
        std::cout << "| " << recipe.name;
        for (const int look : {4, 6, 10, 20}) {
            std::cout << " | ";
            for (const auto verdict : {Verdict::TooEarly, Verdict::NoSetback, Verdict::Recovered,
                                       Verdict::Recovering, Verdict::Holding, Verdict::Declining}) {
                std::printf("%.0f", 100.0 * of.share(look, verdict)) ;
                std::fflush(stdout);
                std::cout << (verdict == Verdict::Declining ? "" : "/") << std::flush;
            }
        }
        std::cout << " | " << percent(of.of_all(of.bad_ever)) << " |\n";
    }
}

/// Share of plants of which good news is told, by readings after the event, one line a true share of the rate.
std::string power_picture(int series)
{
    constexpr double kLeft = 70.0;
    constexpr double kTop = 44.0;
    constexpr double kWide = 560.0;
    constexpr double kHigh = 300.0;
    struct Line {
        double share;
        const char* label;
        const char* colour;
        const char* dash;
    };
    const auto x = [&](int look) { return kLeft + kWide * (look - 1) / (kLastLook - 1); };
    const auto y = [&](double share) { return kTop + kHigh * (1.0 - share); };
    std::ostringstream svg;
    svg << "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 760 400\" font-family=\"sans-serif\" "
           "font-size=\"13\">\n<rect width=\"760\" height=\"400\" fill=\"#fbfaf5\"/>\n"
        << "<text x=\"70\" y=\"24\" font-size=\"15\">Share of plants of which good news is told, by readings after "
           "the event (one a week)</text>\n";
    for (int tenth = 0; tenth <= 10; tenth += 2) {
        svg << "<line x1=\"" << kLeft << "\" x2=\"" << kLeft + kWide << "\" y1=\"" << y(tenth / 10.0) << "\" y2=\""
            << y(tenth / 10.0) << "\" stroke=\"#ddd8c8\"/><text x=\"" << kLeft - 8 << "\" y=\"" << y(tenth / 10.0) + 4
            << "\" text-anchor=\"end\">" << tenth * 10 << " %</text>\n";
    }
    for (const int look : {1, 4, 6, 8, 10, 12, 14, 16, 18, 20}) {
        svg << "<text x=\"" << x(look) << "\" y=\"" << kTop + kHigh + 20 << "\" text-anchor=\"middle\">" << look
            << "</text>\n";
    }
    svg << "<text x=\"70\" y=\"388\">Before 3 to 7 % a week, 8 to 14 readings, ruler 1 to 3 %, 3 % misread, up to four "
           "weeks of standstill</text>\n";
    for (const auto& line : {Line{1.0, "all", "#1b6ca8", ""}, Line{0.8, "0.8", "#2a8a5f", "8 3"},
                             Line{0.5, "half", "#8a6d1d", "4 3"}, Line{0.35, "0.35", "#a3501f", "2 3"},
                             Line{0.2, "0.2", "#8c2f5c", "1 4"}}) {
        const auto of = tally({.name = "power",
                               .share = line.share,
                               .rate_low = 0.03,
                               .rate_high = 0.07,
                               .before_low = 8,
                               .before_high = 14,
                               .gap_low = 1.0,
                               .gap_high = 1.0},
                              series, kSeed + 2);
        svg << "<polyline fill=\"none\" stroke=\"" << line.colour << "\" stroke-width=\"2.2\""
            << (*line.dash ? std::string{" stroke-dasharray=\""} + line.dash + "\"" : "") << " points=\"";
        std::cout << "| " << line.label;
        for (int look = 1; look <= kLastLook; ++look) {
            svg << x(look) << ',' << y(of.good(look)) << ' ';
            if (look == 4 || look == 6 || look == 8 || look == 10 || look == 14 || look == 20) {
                std::cout << " | " << percent(of.good(look));
            }
        }
        std::cout << " |\n";
        svg << "\"/>\n<text x=\"" << kLeft + kWide + 8 << "\" y=\"" << y(of.good(kLastLook)) + 4 + (line.share == 1.0 ? -8 : line.share == 0.5 ? 8 : 0) << "\" fill=\""
            << line.colour << "\">" << line.label << "</text>\n";
    }
    svg << "</svg>\n";
    return svg.str();
}

} // namespace
} // namespace lathhouse::growth

int main(int argc, char** argv)
{
    using namespace lathhouse;
    const auto series = argc > 1 ? parse_integer(argv[1]) : std::optional<int>{};
    if (!series || *series < 1) {
        std::cerr << "recovery_tables SERIES [FILE.svg]\n";
        return 2;
    }
    growth::false_news(*series);
    growth::verdicts(*series);
    std::cout << "Good news, %, by share of the rate and readings after (4, 6, 8, 10, 14, 20)\n";
    const auto picture = growth::power_picture(*series);
    if (argc > 2) {
        if (const auto written = write_file_whole(argv[2], picture); !written) {
            std::cerr << written.error().message << '\n';
            return 1;
        }
    }
    return 0;
}
