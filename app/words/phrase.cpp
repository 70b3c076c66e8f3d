#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "core/base/said.h"

#include <utility>

namespace lathhouse::words {
namespace {

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
    return filled(phrase(source), parts, count);
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
