#include "app/models/ticked_task.h"

#include "app/models/translated.h"
#include "core/base/parse.h"
#include "core/plan/tray_progress.h"

#include <optional>
#include <string_view>
#include <vector>

namespace lathhouse::models {

namespace {

/// Of the key of a task (plan::Task): what it is, of what, and which of them.
std::vector<std::string_view> key_parts(const home::Event& event)
{
    return split(event.detail("task"), '/');
}

QString sowing_task(plan::SowingTaskKind kind)
{
    using enum plan::SowingTaskKind;
    switch (kind) {
    case SowIndoors:
        return tr("sow indoors");
    case SowOutdoors:
        return tr("sow outdoors");
    case CountTray:
        return tr("count the seedlings");
    case PotUp:
        return tr("pot the seedlings up");
    case Harden:
        return tr("begin to harden the seedlings");
    case PlantOut:
        return tr("plant out");
    }
    return {};
}

/// What cannot be read from the key, such as where to, is left out.
QString task_called(std::string_view word)
{
    struct Called {
        std::string_view word;
        const char* said;
    };
    static constexpr Called kAll[] = {{"tonight", QT_TR_NOOP("carry it in for the night")},
                                      {"move", QT_TR_NOOP("carry it to another spot")},
                                      {"out-by-day", QT_TR_NOOP("out by day")},
                                      {"first-night-out", QT_TR_NOOP("the first night out")},
                                      {"into-shade", QT_TR_NOOP("into the shade")},
                                      {"inspect-on-the-way", QT_TR_NOOP("look it over on the way in")},
                                      {"soak", QT_TR_NOOP("soak the pot")},
                                      {"carry-in", QT_TR_NOOP("carry it in")},
                                      {"keep-apart", QT_TR_NOOP("keep it apart")},
                                      {"step-down", QT_TR_NOOP("a step towards less light")},
                                      {"set_apart", QT_TR_NOOP("set it apart")},
                                      {"treat", QT_TR_NOOP("treat against pests")},
                                      {"inspect", QT_TR_NOOP("look for pests")},
                                      {"last_inspection", QT_TR_NOOP("look for pests for the last time")},
                                      {"water", QT_TR_NOOP("feel whether the mix is dry")},
                                      {"feed", QT_TR_NOOP("feed")},
                                      {"wash-out", QT_TR_NOOP("wash the mix through")},
                                      {"after-cold", QT_TR_NOOP("see to it after a cold night")},
                                      {"after-damage", QT_TR_NOOP("see to it after weed-killer or another chemical")},
                                      {"wash", QT_TR_NOOP("wash hands and tools")}};
    for (const auto& called : kAll) {
        if (called.word == word) {
            return tr(called.said);
        }
    }
    return {};
}

} // namespace

QString ticked_task(const home::Event& event)
{
    const auto parts = key_parts(event);
    if (parts.size() != 3) {
        return {};
    }
    if (parts.front() != "seeds") {
        return task_called(parts.front());
    }
    const auto kind = parse_integer(parts[2].substr(0, parts[2].size() - 1));
    return kind && *kind >= 0 && *kind <= static_cast<int>(plan::SowingTaskKind::PlantOut)
               ? sowing_task(static_cast<plan::SowingTaskKind>(*kind))
               : QString{};
}

std::optional<TickedSeeds> ticked_seeds(const home::Event& event)
{
    const auto parts = key_parts(event);
    if (parts.size() != 3 || parts.front() != "seeds" || parts[2].empty()) {
        return std::nullopt;
    }
    const auto number = parse_integer(parts[1]);
    return number ? std::optional{TickedSeeds{*number, parts[2].back() == 't'}} : std::nullopt;
}

QString ticked_words(const home::Event& event)
{
    const QString task = ticked_task(event);
    switch (event.kind) {
    case home::EventKind::TaskDone:
        return task.isEmpty() ? tr("ticked in the round") : tr("ticked in the round: %1").arg(task);
    case home::EventKind::TaskPostponed:
        return task.isEmpty() ? tr("put off in the round") : tr("put off in the round: %1").arg(task);
    case home::EventKind::TaskSkipped:
        return task.isEmpty() ? tr("left out in the round") : tr("left out in the round: %1").arg(task);
    default:
        return {};
    }
}

} // namespace lathhouse::models
