#include "core/journal/demonstration_pictures.h"

#include "core/base/sha256.h"
#include "core/home/measurement.h"
#include "core/journal/durable_file.h"
#include "core/journal/photo_book.h"
#include "core/photo/encode.h"
#include "core/photo/greenness.h"
#include "core/photo/photo_file.h"

#include <atomic>
#include <thread>

namespace lathhouse::journal {
namespace {

constexpr int kSmallWidth = 160; ///< Of pictures beyond the story, of which there may be thousands.
constexpr int kSmallHeight = 120;
constexpr std::size_t kBatch = 256;

struct Taken {
    photo::Bytes file;
    std::optional<double> green;
};

photo::Picture drawn(const home::DemonstrationPhoto& photo)
{
    const bool extra = photo.name.starts_with("extra-");
    return photo::drawn_plant(photo.drawn, extra ? kSmallWidth : home::kDemonstrationPhotoWidth,
                              extra ? kSmallHeight : home::kDemonstrationPhotoHeight);
}

/// As any photo is measured: from the file, in the outline that all pictures of the plant share.
std::optional<double> green_in(const photo::Bytes& file, const home::DemonstrationPhoto& photo)
{
    const auto read = photo::read_photo(file, photo.name);
    if (!read) {
        return std::nullopt;
    }
    const auto places =
        photo::drawn_places(photo.drawn, read->picture.width, read->picture.height, photo.reach_cm);
    const auto region = photo::Region::outline(places.crown, read->picture.width, read->picture.height);
    return region ? std::optional{photo::green_cover(read->picture, *region).share()} : std::nullopt;
}

std::vector<Taken> taken_of(std::span<const home::DemonstrationPhoto> photos, const home::Household& household)
{
    std::vector<Taken> taken(photos.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t at = next++; at < photos.size(); at = next++) {
            taken[at].file = demonstration_file(photos[at], household);
            if (photos[at].measured) {
                taken[at].green = green_in(taken[at].file, photos[at]);
            }
        }
    };
    std::vector<std::jthread> workers;
    for (unsigned worker = 1; worker < std::max(1U, std::thread::hardware_concurrency()); ++worker) {
        workers.emplace_back(work);
    }
    work();
    workers.clear();
    return taken;
}

} // namespace

photo::Bytes demonstration_file(const home::DemonstrationPhoto& photo, const home::Household& household)
{
    photo::Exif exif;
    exif.taken = std::chrono::local_seconds{calendar::start_of_day_utc(photo.taken).time_since_epoch()} + photo.time;
    exif.position = household.place.position;
    exif.camera = "Drawn for the demonstration";
    constexpr int kQuality = 88;
    const auto jpeg = photo::encode_jpeg(drawn(photo), kQuality);
    return jpeg ? photo::with_exif(*jpeg, photo::make_exif(exif)) : photo::Bytes{};
}

Result<void> take_pictures(HouseholdStore& store, const home::Household& household,
                           const std::vector<home::DemonstrationPhoto>& photos)
{
    PhotoBook book{store};
    std::vector<home::Measurement> measurements;
    for (std::size_t first = 0; first < photos.size(); first += kBatch) {
        const auto batch = std::span{photos}.subspan(first, std::min(kBatch, photos.size() - first));
        const auto taken = taken_of(batch, household);
        std::vector<home::Photo> entries;
        for (std::size_t at = 0; at < batch.size(); ++at) {
            const auto& one = batch[at];
            const auto facts = photo::read_facts(taken[at].file, one.name);
            if (!facts) {
                return facts.error();
            }
            const auto entered = calendar::start_of_day_utc(one.taken) + std::chrono::hours{19};
            home::Photo entry{.id = 0,
                              .sha256 = sha256_of(taken[at].file),
                              .extension = "jpg",
                              .bytes = static_cast<std::int64_t>(taken[at].file.size()),
                              .width = facts->width,
                              .height = facts->height,
                              .taken = *facts->exif.taken,
                              .zone_offset = facts->exif.zone_offset,
                              .taken_from = home::TakenFrom::Exif,
                              .original_name = one.name,
                              .position = facts->exif.position,
                              .entered = entered,
                              .plants = {one.plant}};
            // Not one by one synced: a demonstration that a power cut halves is made anew.
            write_cached(book.file_of(entry), taken[at].file);
            std::error_code failure;
            if (std::filesystem::file_size(book.file_of(entry), failure) != taken[at].file.size() || failure) {
                return Error{ErrorCode::Unwritable, said("%1 could not be written; make room or choose another folder",
                                                         book.file_of(entry).string())};
            }
            if (taken[at].green) {
                measurements.push_back({.plant = one.plant,
                                        .kind = home::MeasurementKind::GreenCover,
                                        .measured = one.taken,
                                        .repeats = {*taken[at].green},
                                        .method = home::MeasurementMethod::Photo,
                                        .entered = entered,
                                        .photo = entry.sha256});
            }
            entries.push_back(std::move(entry));
        }
        if (const auto kept = book.keep(entries); !kept) {
            return kept.error();
        }
    }
    const auto recorded = store.record(std::span<const home::Measurement>{measurements});
    return recorded ? Result<void>{} : Result<void>{recorded.error()};
}

} // namespace lathhouse::journal
