#include "app/models/kind_filter.h"

#include "app/models/word_form.h"
#include "app/words/kind_words.h"

#include <algorithm>
#include <array>
#include <map>

namespace lathhouse::models {

namespace {

constexpr std::array kEvidences{plants::Evidence::PublishedNumber, plants::Evidence::PublishedTest, plants::Evidence::PublishedRating,
                                plants::Evidence::PublishedGroupFigure, plants::Evidence::Memory};

/// A group of the tables; by its key where it is a new one.
QString group_words(const std::string& group)
{
    const std::map<std::string, QString> words{
        {"annual_porch", KindFilter::tr("summer flowers")},
        {"bulb_porch", KindFilter::tr("bulbs and tubers")},
        {"carnivorous", KindFilter::tr("insect eaters")},
        {"citrus_fruit", KindFilter::tr("citrus and fruit")},
        {"fern", KindFilter::tr("ferns")},
        {"flowering", KindFilter::tr("flowering pot plants")},
        {"foliage", KindFilter::tr("foliage plants")},
        {"herb", KindFilter::tr("herbs")},
        {"orchid", KindFilter::tr("orchids")},
        {"palm", KindFilter::tr("palms")},
        {"porch_hardy", KindFilter::tr("hardy porch plants")},
        {"porch_tender", KindFilter::tr("tender porch plants")},
        {"succulent", KindFilter::tr("succulents")},
        {"vegetable", KindFilter::tr("vegetables")}};
    const auto there = words.find(group);
    return there != words.end() ? there->second : text(group);
}

QString evidence_words(plants::Evidence evidence)
{
    switch (evidence) {
    case plants::Evidence::PublishedNumber:
        return KindFilter::tr("a figure of their own");
    case plants::Evidence::PublishedTest:
        return KindFilter::tr("a cold-store test");
    case plants::Evidence::PublishedRating:
        return KindFilter::tr("a hardiness class");
    case plants::Evidence::PublishedGroupFigure:
        return KindFilter::tr("a figure of their group");
    case plants::Evidence::Memory:
        break;
    }
    return KindFilter::tr("common practice");
}

} // namespace

KindFilter::KindFilter(QObject* parent) : QObject(parent)
{
    std::map<std::string, int> counts;
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        ++counts[kind.group];
    }
    for (const auto& [group, count] : counts) {
        groups_.push_back(group);
    }
    std::ranges::stable_sort(groups_, [&](const auto& a, const auto& b) { return counts[a] > counts[b]; });
}

QStringList KindFilter::groups() const
{
    QStringList words{tr("all groups")};
    for (const auto& group : groups_) {
        words.append(group_words(group));
    }
    return words;
}

void KindFilter::setGroup(int group)
{
    if (group >= 0 && group <= static_cast<int>(groups_.size()) && group != group_) {
        group_ = group;
        emit changed();
    }
}

QStringList KindFilter::evidences() const
{
    QStringList words{tr("whatever it is")};
    for (const auto evidence : kEvidences) {
        words.append(evidence_words(evidence));
    }
    return words;
}

void KindFilter::setEvidence(int evidence)
{
    if (evidence >= 0 && evidence <= static_cast<int>(kEvidences.size()) && evidence != evidence_) {
        evidence_ = evidence;
        emit changed();
    }
}

QString KindFilter::meaning() const
{
    return evidence_ == 0 ? QString{}
                          : upper_first(text(words::rests_on(kEvidences[static_cast<std::size_t>(evidence_) - 1]))) + QLatin1Char('.');
}

bool KindFilter::passes(const plants::PlantKind& kind) const
{
    return (group_ == 0 || kind.group == groups_[static_cast<std::size_t>(group_) - 1]) &&
           (evidence_ == 0 || kind.cold_evidence == kEvidences[static_cast<std::size_t>(evidence_) - 1]);
}

void KindFilter::clear()
{
    if (narrows()) {
        group_ = 0;
        evidence_ = 0;
        emit changed();
    }
}

} // namespace lathhouse::models
