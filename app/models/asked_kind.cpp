#include "app/models/asked_kind.h"

#include "app/models/apostrophes.h"
#include "app/models/translated.h"
#include "app/words/table_words.h"

#include <QStringList>

namespace lathhouse::models {

QString shown_name(const plants::PlantKind& kind)
{
    return printed_apostrophes(kept_name(kind));
}

QString kept_name(const plants::PlantKind& kind)
{
    return QString::fromStdString(words::common_name(kind.botanical_name, kind.common_names.front()));
}

AskedKind asked_kind(const QString& typed)
{
    const auto& reference = plants::PlantReference::built_in();
    const QString name = plain_apostrophes(typed.trimmed());
    if (const auto kind = reference.find(name.toStdString())) {
        return {*kind, {}};
    }
    for (const auto& kind : reference.kinds()) {
        if (kept_name(kind).compare(name, Qt::CaseInsensitive) == 0) {
            return {&kind, {}};
        }
    }
    constexpr std::size_t kMostNear = 3;
    QStringList near;
    for (const auto& other : reference.near_names(name.toStdString(), kMostNear)) {
        const auto kind = reference.find(other);
        near.append(kind ? shown_name(**kind) : QString::fromStdString(other));
    }
    return {nullptr, near.isEmpty() ? tr("No kind here is called “%1”.").arg(name)
                                    : tr("No kind here is called “%1”. Did you mean %2?").arg(name, near.join(tr(" or ")))};
}

} // namespace lathhouse::models
