#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "core/base/said.h"

#include <utility>

namespace lathhouse::words {
namespace {

/// Ends with a point of its own, as the short months of some languages do ("3. Sept.").
bool ends_with_point(std::string_view part)
{
    return part.ends_with('.') && !part.ends_with("..");
}

/// The sentence without the full stop behind a place whose part brings a point along.
std::string closed_once(std::string sentence, const std::string_view* parts, std::size_t count)
{
    for (std::size_t at = sentence.find('%'); at != std::string::npos; at = sentence.find('%', at + 1)) {
        const bool stops = at + 2 < sentence.size() && sentence[at + 1] >= '1' && sentence[at + 1] <= '9' && sentence[at + 2] == '.' &&
                           (at + 3 == sentence.size() || sentence[at + 3] == ' ' || sentence[at + 3] == '\n');
        const auto part = stops ? static_cast<std::size_t>(sentence[at + 1] - '1') : count;
        if (part < count && ends_with_point(parts[part])) {
            sentence.erase(at + 2, 1);
        }
    }
    return sentence;
}

/// Set once before there are threads, and only read after; the rooms that say something know no one to ask.
Reader& reader()
{
    static Reader kept;
    return kept;
}

} // namespace

const std::string& language()
{
    return reader().language;
}

void speak_to(Reader of)
{
    reader() = std::move(of);
}

char decimal_mark()
{
    return reader().decimal_mark;
}

bool month_first()
{
    return reader().month_first;
}

std::string phrase(const char* source)
{
    if (reader().phrase) {
        if (auto said = reader().phrase(source); !said.empty()) {
            return said;
        }
    }
    return source;
}

std::string phrase_of(const char* source, const std::string_view* parts, std::size_t count)
{
    return filled(closed_once(phrase(source), parts, count), parts, count);
}

std::string joined(const std::vector<std::string>& pieces)
{
    if (pieces.empty()) {
        return {};
    }
    std::string before = pieces.front();
    for (std::size_t i = 1; i + 1 < pieces.size(); ++i) {
        before += ", " + pieces[i];
    }
    return pieces.size() == 1 ? before : phrase("%1 and %2", before, pieces.back());
}

} // namespace lathhouse::words
