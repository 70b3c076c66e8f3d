#include "app/models/plant_model.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

constexpr int kMostPhotos = 24;
constexpr std::size_t kNewestHistory = 8;
constexpr std::size_t kMoreHistory = 50;

} // namespace

PlantModel::PlantModel(PlantsModel& plants, QObject* parent)
    : SheetModel(parent), plants_(plants), history_shown_(kNewestHistory), chips_({"words", "hand", "reason"}),
      photos_({"source", "date", "words", "newest", "sentence", "photo"}), kinds_({"words", "shown"}),
      judged_({"words", "shown"}), spared_({"words", "shown"}),
      hazards_({"strong", "rest", "rust"}), readings_({"date", "value", "change", "repeats", "sentence"}),
      history_({"date", "what", "note", "sentence"}), album_(plants), measure_in_photo_(plants, album_), coming_(plants), leaving_(plants, album_), feeding_asked_(plants), comparison_(plants)
{
    connect(&plants_, &PlantsModel::openedChanged, this, [this] {
        measure_.reset();
        judge_ = {};
        history_shown_ = kNewestHistory;
        reload();
    });
    connect(&plants_, &PlantsModel::groundChanged, this, &SheetModel::reload);
}

void PlantModel::askDose()
{
    if (facts_.feed) {
        emit feedDoseAsked(*facts_.feed);
    }
}

void PlantModel::choose(int kind)
{
    if (kind >= 0 && kind < static_cast<int>(facts_.measures.size())) {
        measure_ = facts_.measures[static_cast<std::size_t>(kind)];
        reload();
    }
}

void PlantModel::judge(int event)
{
    if (event >= 0 && event < static_cast<int>(facts_.judgeable.size())) {
        judge_.event = facts_.judgeable[static_cast<std::size_t>(event)];
        reload();
    }
}

void PlantModel::takeForSpared(int plant)
{
    if (plant >= 0 && plant < static_cast<int>(facts_.companions.size())) {
        const auto id = facts_.companions[static_cast<std::size_t>(plant)];
        if (std::erase(judge_.spared, id) == 0) {
            judge_.spared.push_back(id);
        }
        reload();
    }
}

void PlantModel::setPhotosShown(int photos)
{
    photos = std::clamp(photos, 1, kMostPhotos);
    if (photos != photos_shown_) {
        photos_shown_ = photos;
        emit photosShownChanged();
        if (photos_.rowCount() > 0) {
            reload();
        }
    }
}

void PlantModel::showMoreHistory()
{
    history_shown_ += kMoreHistory;
    reload();
}

void PlantModel::showNewestHistory()
{
    history_shown_ = kNewestHistory;
    reload();
}

void PlantModel::read()
{
    const int id = plants_.opened();
    const auto ground = plants_.facts().ground;
    if (id == 0 || !ground) {
        return;
    }
    const int number = ++asked_;
    const journal::PlantAsked asked{.kind = measure_, .newest = history_shown_, .photos = static_cast<std::size_t>(photos_shown_)};
    work<PlantFacts>(
        [ground, id, asked, judge = judge_, door = plants_.door(), look = plants_.look()]() -> Result<PlantFacts> {
            return plant_facts(*ground, id, asked, door, look, judge);
        },
        [this, number](Result<PlantFacts> made) {
            if (number != asked_) {
                return;
            }
            if (!made) {
                fail(made.error());
                return;
            }
            if (made->gone) {
                plants_.close_missing(made->id);
                return;
            }
            facts_ = std::move(*made);
            chips_.show(facts_.chips);
            photos_.show(facts_.photos);
            kinds_.show(facts_.kinds);
            judged_.show(facts_.judged);
            spared_.show(facts_.spared);
            hazards_.show(facts_.hazards);
            readings_.show(facts_.readings);
            history_.show(facts_.history);
            set_known();
            emit plantChanged();
        });
}

} // namespace lathhouse::models
