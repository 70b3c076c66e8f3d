#pragma once

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

namespace lathhouse::models {

/// What was written on one page, to be taken back from there: the last first; and what was taken back, to be written
/// again in the same manner. Once something new is written, what was taken back is not brought back any more.
template <class Entry>
class WrittenHere {
public:
    bool can_undo() const { return !written_.empty(); }
    bool can_redo() const { return !undone_.empty(); }
    /// What would be taken back next; null where nothing was written here.
    const Entry* last() const { return written_.empty() ? nullptr : &written_.back(); }
    void add(Entry entry)
    {
        written_.push_back(std::move(entry));
        undone_.clear();
    }
    /// What is taken back now; nullopt where nothing was written here.
    std::optional<Entry> undo() { return turn(written_, undone_); }
    /// What is written again now; nullopt where nothing was taken back last.
    std::optional<Entry> redo() { return turn(undone_, written_); }
    /// Was not written after all: the first that is meant.
    template <class IsMeant>
    void drop_written(IsMeant is_meant)
    {
        drop(written_, is_meant);
    }
    /// Was not taken back after all.
    template <class IsMeant>
    void drop_undone(IsMeant is_meant)
    {
        drop(undone_, is_meant);
    }
    void forget_written() { written_.clear(); }
    void forget_undone() { undone_.clear(); }
    void forget()
    {
        written_.clear();
        undone_.clear();
    }

private:
    static std::optional<Entry> turn(std::vector<Entry>& from, std::vector<Entry>& to)
    {
        if (from.empty()) {
            return std::nullopt;
        }
        Entry last = std::move(from.back());
        from.pop_back();
        to.push_back(last);
        return last;
    }
    template <class IsMeant>
    static void drop(std::vector<Entry>& entries, IsMeant is_meant)
    {
        if (const auto there = std::ranges::find_if(entries, is_meant); there != entries.end()) {
            entries.erase(there);
        }
    }

    std::vector<Entry> written_;
    std::vector<Entry> undone_; ///< In the order in which they were taken back.
};

} // namespace lathhouse::models
