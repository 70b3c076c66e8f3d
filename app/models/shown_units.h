#pragma once

#include <atomic>
#include <memory>

namespace lathhouse::models {

enum class Units { Metric, Us };

/// The units that a window shows everything in. Copies share one choice, so that it can be changed while pages are
/// open and while threads read it; what was worked out before is to be worked out again.
class ShownUnits {
public:
    ShownUnits(Units units = Units::Metric) : kept_(std::make_shared<std::atomic<Units>>(units)) {}

    operator Units() const { return kept_->load(); }
    /// For every copy at once.
    void show(Units units) const { kept_->store(units); }

private:
    std::shared_ptr<std::atomic<Units>> kept_;
};

} // namespace lathhouse::models
