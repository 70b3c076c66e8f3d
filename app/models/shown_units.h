#pragma once

#include <atomic>
#include <memory>

namespace lathhouse::models {

enum class Units { Metric, Us };

/// The units that a window shows everything in: degrees by themselves (many who measure in cups read °C), and lengths,
/// volumes and weights together. Copies share one choice, so that it can be changed while pages are open and while
/// threads read it; what was worked out before is to be worked out again.
class ShownUnits {
public:
    /// Degrees and measures of one kind.
    ShownUnits(Units units = Units::Metric) : kept_(std::make_shared<Kept>(units)) {}

    Units measures() const { return kept_->measures.load(); }
    /// Metric: Celsius; Us: Fahrenheit.
    Units degrees() const { return kept_->degrees.load(); }
    /// For every copy at once.
    void show_measures(Units units) const { kept_->measures.store(units); }
    void show_degrees(Units units) const { kept_->degrees.store(units); }
    void show(Units units) const
    {
        show_measures(units);
        show_degrees(units);
    }

private:
    struct Kept {
        explicit Kept(Units units) : measures(units), degrees(units) {}
        std::atomic<Units> measures;
        std::atomic<Units> degrees;
    };
    std::shared_ptr<Kept> kept_;
};

} // namespace lathhouse::models
