#include "app/words/refusal.h"

#include "app/words/phrase.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstddef>
#include <string_view>
#include <vector>

namespace lathhouse::words {
namespace {

/// A sentence of the core that names a command, an option or a word of tables, and what stands in its stead at the window.
struct ForWindow {
    const char* core;
    const char* window;
};

constexpr std::array kForWindow{
    ForWindow{"%1 %2; name a folder that `lathhouse export csv` made",
              said_later("%1 %2; choose a folder into which a household was written as tables")},
    ForWindow{"%1 holds %2 stations; choose one with --station, such as %3",
              said_later("%1 holds %2 stations; write one of them under Station, such as %3")},
    ForWindow{"%1 is in GHCN-Daily's form, which is always in degrees Celsius; leave out --fahrenheit",
              said_later("%1 is in GHCN-Daily's form, which is always in degrees Celsius; choose °C and millimetres")},
    ForWindow{"%1 is there already; choose another name, or say --replace",
              said_later("%1 is there already; choose another name, or replace it")},
    ForWindow{"%1 is damaged and was not backed up; `lathhouse check` says where, and `lathhouse export csv DIR --salvage` "
              "saves what can be read",
              said_later("%1 is damaged and was not backed up; look through the folder to see where, and bring the last "
                         "backup back")},
    ForWindow{"%1 is damaged; `export csv DIR --salvage` saves what can be read",
              said_later("%1 is damaged, so no tables were written; bring the last backup back")},
    ForWindow{"%1.csv: row %2 names a row of %3.csv that is not there; mend it, or say --leave-out-broken",
              said_later("%1.csv: row %2 names a row of %3.csv that is not there; mend it, or choose that such rows are left out")},
    ForWindow{"%1 has no column \"%2\"; it has %3; say with --columns %2=NAME what it is called",
              said_later("%1 has no column \"%2\"; it has %3; call its columns so")},
    ForWindow{"%1 has no column \"%2\"; name its columns, such as --columns date=Day,low=Min,high=Max",
              said_later("%1 has no column \"%2\"; write the names of its columns, such as Day,Min,Max")},
    ForWindow{"there is no spot \"%1\"; see `lathhouse list spots`",
              said_later("there is no spot \"%1\" in the household; write its name as it stands there")},
    ForWindow{"no spot is named; fill the column spot or say --spot",
              said_later("no spot is named; fill the column spot")},
    ForWindow{"no station lies within %1 km and %2 m of height of that place; give a place or height nearer to one, or "
              "figures of your own with --monthly",
              said_later("no station lies within %1 km and %2 m of height of that place; give a place or height nearer to one")},
    ForWindow{"there is no household in %1 yet; name one with --home, or make an example with: lathhouse demo DIR",
              said_later("there is no household in %1")},
    ForWindow{"there is no folder %1; name a household's folder with --home, or make one with `lathhouse demo`",
              said_later("there is no folder %1; choose a household's folder")},
    ForWindow{"there is no living plant %1 to divide; `lathhouse list plants` shows their ids",
              said_later("the plant is not among those that live, so it cannot be divided")},
    ForWindow{"there is no photo %1; `lathhouse list photos` shows them", said_later("that photo is no longer there")},
    ForWindow{"there is no such lot; `lathhouse list lots` shows their ids", said_later("that lot is no longer there")},
    ForWindow{"there is no such plant; `lathhouse list plants` shows them", said_later("the plant is no longer there")},
    ForWindow{"there is no such tray; `lathhouse show lot` shows a lot's trays", said_later("that tray is no longer there")},
    ForWindow{"no crop named \"%1\" in the reference of seeds; `lathhouse sowing --calendar` names the crops that can be sown now",
              said_later("no crop named \"%1\" in the reference of seeds; choose one of the list")},
    ForWindow{"the values look like degrees Fahrenheit taken for Celsius; import them with --fahrenheit",
              said_later("the values look like degrees Fahrenheit taken for Celsius; choose °F and inches")},
    ForWindow{"the values look like degrees Celsius taken for Fahrenheit; import them without --fahrenheit",
              said_later("the values look like degrees Celsius taken for Fahrenheit; choose °C and millimetres")},
    ForWindow{"new_leaves", said_later("new leaves")},
    ForWindow{"longest_leaf", said_later("longest leaf")},
    ForWindow{"green_cover", said_later("green cover")},
    ForWindow{"yellow_share", said_later("yellow share")},
};

const char* sentence_here(const char* sentence)
{
    const auto found = std::ranges::find(kForWindow, std::string_view{sentence}, &ForWindow::core);
    return found == kForWindow.end() ? sentence : found->window;
}

/// "-12.5", nothing else.
bool is_decimal(std::string_view text)
{
    if (text.starts_with('-')) {
        text.remove_prefix(1);
    }
    const auto is_digit = [](unsigned char letter) { return std::isdigit(letter) != 0; };
    const auto point = text.find('.');
    return point != std::string_view::npos && point > 0 && point + 1 < text.size() &&
           std::ranges::all_of(text.substr(0, point), is_digit) && std::ranges::all_of(text.substr(point + 1), is_digit);
}

std::string part_of(std::string text)
{
    if (is_decimal(text)) {
        std::ranges::replace(text, '.', decimal_mark());
    }
    return text;
}

std::string sentence_of(const char* sentence, const std::vector<Said>& parts)
{
    std::vector<std::string> said;
    said.reserve(parts.size());
    for (const auto& part : parts) {
        said.push_back(refusal(part));
    }
    const std::vector<std::string_view> views{said.begin(), said.end()};
    return phrase_of(sentence_here(sentence), views.data(), views.size());
}

} // namespace

std::string refusal(const Said& said)
{
    return said.sentence == nullptr ? part_of(said.text) : sentence_of(said.sentence, said.parts);
}

std::string refusal(const Error& error)
{
    return error.sentence == nullptr ? error.message : sentence_of(error.sentence, error.parts);
}

} // namespace lathhouse::words
