#pragma once

#include "core/home/history.h"

#include <memory>
#include <utility>
#include <vector>

namespace lathhouse::home {

/// What happened, in the journal's order. Copies share it, so that all pages of a window hold it once: ten years of sixty plants are
/// ten megabytes. It is copied by who changes it while others have it too.
class EventList {
public:
    using value_type = Event;
    using const_iterator = std::vector<Event>::const_iterator;

    EventList() : events_(std::make_shared<std::vector<Event>>()) {}
    EventList(std::vector<Event> events) : events_(std::make_shared<std::vector<Event>>(std::move(events))) {}

    const_iterator begin() const { return events_->cbegin(); }
    const_iterator end() const { return events_->cend(); }
    std::size_t size() const { return events_->size(); }
    bool empty() const { return events_->empty(); }
    const Event& operator[](std::size_t at) const { return (*events_)[at]; }
    const Event& front() const { return events_->front(); }
    const Event& back() const { return events_->back(); }
    operator const std::vector<Event>&() const { return *events_; }

    /// To be changed. What others copied before stays as it was.
    std::vector<Event>& edit()
    {
        if (events_.use_count() > 1) {
            events_ = std::make_shared<std::vector<Event>>(*events_);
        }
        return *events_;
    }
    void push_back(Event event) { edit().push_back(std::move(event)); }

private:
    std::shared_ptr<std::vector<Event>> events_; ///< Never null.
};

} // namespace lathhouse::home
