#include "core/base/said.h"

#include "core/base/result.h"

namespace lathhouse {

Said::Said(const Error& error) : text(error.message), sentence(error.sentence), parts(error.parts) {}

std::string filled(std::string_view sentence, const std::string_view* parts, std::size_t count)
{
    std::string text;
    text.reserve(sentence.size() + 32);
    for (std::size_t i = 0; i < sentence.size(); ++i) {
        const bool place =
            sentence[i] == '%' && i + 1 < sentence.size() && sentence[i + 1] >= '1' && sentence[i + 1] <= '9';
        const auto number = place ? static_cast<std::size_t>(sentence[i + 1] - '1') : count;
        if (number < count) {
            text += parts[number];
            ++i;
        } else {
            text += sentence[i];
        }
    }
    return text;
}

Said put_together(const char* sentence, std::vector<Said> parts)
{
    std::vector<std::string_view> texts;
    texts.reserve(parts.size());
    for (const auto& part : parts) {
        texts.push_back(part.text);
    }
    Said made;
    made.text = filled(sentence, texts.data(), texts.size());
    made.sentence = sentence;
    made.parts = std::move(parts);
    return made;
}

} // namespace lathhouse
