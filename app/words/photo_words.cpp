#include "app/words/photo_words.h"

#include "app/words/words.h"
#include "core/photo/exif.h"

namespace lathhouse::words {

std::string photo_time(std::chrono::local_seconds taken)
{
    const auto date = calendar::utc_date(calendar::Instant{taken.time_since_epoch()});
    return full_day(date) + ", " + photo::to_text(taken).substr(11, 5);
}

} // namespace lathhouse::words
