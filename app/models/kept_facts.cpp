#include "app/models/kept_facts.h"

#include "core/journal/change_watch.h"

#include <memory>
#include <mutex>
#include <optional>
#include <utility>

namespace lathhouse::models {

namespace {

class FactsKeeper {
public:
    FactsKeeper(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> read)
        : folder_(std::move(folder)), read_(std::move(read))
    {
    }

    Result<plan::HouseholdFacts> facts()
    {
        const std::lock_guard lock(guard_);
        if (!watch_) {
            if (auto watch = journal::ChangeWatch::open(folder_)) {
                watch_ = std::move(*watch);
            }
        } else if (!watch_->changed() && last_) {
            return *last_;
        }
        // What is written while it is read counts as a change the next time.
        last_.reset();
        auto now = read_();
        if (now && watch_) {
            last_ = *now;
        }
        return now;
    }

private:
    const std::filesystem::path folder_;
    const std::function<Result<plan::HouseholdFacts>()> read_;
    std::mutex guard_;
    std::optional<journal::ChangeWatch> watch_; ///< None where the folder could not be opened: then it is read each time.
    std::optional<plan::HouseholdFacts> last_;
};

} // namespace

std::function<Result<plan::HouseholdFacts>()> kept_facts(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> read)
{
    return [keeper = std::make_shared<FactsKeeper>(std::move(folder), std::move(read))] { return keeper->facts(); };
}

} // namespace lathhouse::models
