#include "app/words/calendar_words.h"

#include "app/words/phrase.h"

namespace lathhouse::words {

std::string hardening_in_calendar()
{
    return phrase("hardening, out by day");
}

std::string caution_in_calendar()
{
    return phrase("A date of the plan, which is a chance and not a promise.");
}

} // namespace lathhouse::words
