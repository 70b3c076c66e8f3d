#include "app/words/phrase.h"
#include "app/words/table_words.h"

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
    const std::string sentence = phrase(source);
    std::string said;
    said.reserve(sentence.size() + 32);
    for (std::size_t i = 0; i < sentence.size(); ++i) {
        const bool place = sentence[i] == '%' && i + 1 < sentence.size() && sentence[i + 1] >= '1' && sentence[i + 1] <= '9';
        const auto number = place ? static_cast<std::size_t>(sentence[i + 1] - '1') : count;
        if (number < count) {
            said += parts[number];
            ++i;
        } else {
            said += sentence[i];
        }
    }
    return said;
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
