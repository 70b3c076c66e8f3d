#include "tests/cli/run_command.h"
#include "tests/journal/temporary_folder.h"
#include "tests/photo/sample_photos.h"

#include "core/base/csv.h"
#include "core/photo/photo_file.h"

#include <filesystem>

namespace lathhouse::cli {
namespace {

namespace fs = std::filesystem;

/// A plain picture: a square of 200 pixels in leaf green and one of 50 in yellow, on grey.
photo::Picture squares()
{
    photo::Picture picture{400, 300, 128};
    const auto paint = [&](int left, int top, int side, int red, int green, int blue) {
        for (int y = top; y < top + side; ++y) {
            for (int x = left; x < left + side; ++x) {
                auto* pixel = picture.at(x, y);
                pixel[0] = static_cast<std::uint8_t>(red);
                pixel[1] = static_cast<std::uint8_t>(green);
                pixel[2] = static_cast<std::uint8_t>(blue);
            }
        }
    };
    paint(20, 20, 200, 60, 140, 50);
    paint(300, 20, 50, 200, 170, 40);
    return picture;
}

class Photos : public journal::WithFolder {
protected:
    Photos()
    {
        photo::write_bytes(file("plain.png"), photo::encode_png(squares()).value());
        photo::write_bytes(file("phone.jpg"), photo::jpeg_with(photo::drawn_plant(160, 120), photo::sample_exif()));
    }
    std::string file(const std::string& name) const { return (folder_ / name).string(); }
    std::string home() const { return file("home"); }
    Ran with_home(std::vector<std::string> arguments) const
    {
        std::vector<std::string> all{"--home", home(), "--on", "2027-06-10"};
        all.insert(all.end(), arguments.begin(), arguments.end());
        return run_command(all);
    }
    void make_home() const { ASSERT_EQ(run_command({"--on", "2027-01-10", "demo", home(), "--photos", "0"}).status, 0); }
    nlohmann::json first_plant() const { return with_home({"list", "plants", "--json"}).json()["plants"][0]; }
};

TEST_F(Photos, MeasuredGivesTheKeysOfTheContract)
{
    const auto ran = run_command({"photo", file("plain.png"), "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_EQ(json["width_px"], 400);
    EXPECT_EQ(json["height_px"], 300);
    EXPECT_TRUE(json["taken"].is_null());
    EXPECT_EQ(json["orientation"], 1);
    // By hand: excess green of the green square 170, of the yellow one 100; the best cut lies below both.
    EXPECT_EQ(json["green_px"], 42'500);
    EXPECT_NEAR(json["green_share"], 42'500.0 / 120'000.0, 1e-6);
    EXPECT_EQ(json["threshold"], 0);
    EXPECT_NEAR(json["yellow_share"], 2'500.0 / 120'000.0, 1e-6);
    EXPECT_TRUE(json["length_cm"].is_null());
}

TEST_F(Photos, MeasuredTakesSharesOfTheOutline)
{
    const auto json = run_command({"photo", file("plain.png"), "--outline", "270,0,400,0,400,100,270,100", "--json"}).json();
    EXPECT_NEAR(json["yellow_share"], 2'500.0 / 13'000.0, 1e-6);
    EXPECT_NEAR(json["yellow_of_leaf"], 1.0, 1e-9);
}

TEST_F(Photos, MeasuredGivesALengthByItsScaleAndItsErrorByRepeats)
{
    const std::vector<std::string> once{"photo", file("plain.png"), "--scale", "20,20,220,20,10", "--length", "300,20,300,70"};
    auto json_form = once;
    json_form.emplace_back("--json");
    EXPECT_NEAR(run_command(json_form).json()["length_cm"], 2.5, 1e-9);
    const auto text = run_command(once);
    EXPECT_NE(text.out.find("as far from the camera"), std::string::npos);
    json_form.insert(json_form.end(), {"--length", "300,20,300,72"});
    const auto twice = run_command(json_form).json();
    EXPECT_NEAR(twice["length_cm"], 2.55, 1e-9);
    EXPECT_NEAR(twice["length_error_cm"], 0.070711, 1e-6);
    EXPECT_NEAR(twice["real_change_cm"], 2.77 * 0.070711, 1e-5);
}

TEST_F(Photos, MeasuredSaysWhatTheCameraWrote)
{
    const auto json = run_command({"photo", file("phone.jpg"), "--json"}).json();
    EXPECT_EQ(json["taken"], "2026-05-30T14:05:07");
    EXPECT_EQ(json["zone_offset_minutes"], 120);
    EXPECT_NEAR(json["latitude"], -33.5, 1e-6);
    const auto text = run_command({"photo", file("phone.jpg")});
    EXPECT_NE(text.out.find("unless you ask for it"), std::string::npos);
}

TEST_F(Photos, MeasuredWronglyIsSaidInOneLine)
{
    photo::write_bytes(file("half.jpg"), [&] {
        auto bytes = photo::read_bytes(file("phone.jpg")).value();
        bytes.resize(bytes.size() / 2);
        return bytes;
    }());
    struct Wrong {
        int status;
        std::vector<std::string> arguments;
    };
    const auto png = file("plain.png");
    for (const auto& [status, arguments] :
         {Wrong{1, {"photo", file("none.jpg")}}, Wrong{1, {"photo", folder_.string()}}, Wrong{2, {"photo", file("half.jpg")}},
          Wrong{2, {"photo", png, "--outline", "1,2,3"}}, Wrong{2, {"photo", png, "--outline", "a,b,c,d,e,f"}},
          Wrong{2, {"photo", png, "--outline", "0,0,900,0,0,900"}}, Wrong{2, {"photo", png, "--length", "0,0,5,5"}},
          Wrong{2, {"photo", png, "--scale", "0,0,5,5", "--length", "0,0,5,5"}},
          Wrong{2, {"photo", png, "--scale", "0,0,5,5,-3", "--length", "0,0,5,5"}}, Wrong{2, {"photo"}}}) {
        const auto ran = run_command(arguments);
        EXPECT_EQ(ran.status, status) << arguments.back() << ": " << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
}

TEST_F(Photos, MeasuredForAPlantBecomeMeasurements)
{
    make_home();
    const auto ran = with_home({"photo", file("plain.png"), "--outline", "10,10,230,10,230,230,10,230", "--scale",
                                "20,20,220,20,10", "--length", "20,20,20,220", "--plant",
                                std::to_string(first_plant()["id"].get<int>())});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("Kept 3 measurements"), std::string::npos) << ran.out;
    const auto nothing = with_home({"photo", file("plain.png"), "--plant", "1"});
    EXPECT_EQ(nothing.status, 2);
    EXPECT_TRUE(is_one_clear_error(nothing)) << nothing.err;
}

TEST_F(Photos, MeasuredOnADayToComeAreNotKept)
{
    make_home();
    const auto ran = run_command({"--home", home(), "--on", "2026-05-01", "photo", file("phone.jpg"), "--outline",
                                  "10,10,100,10,100,100,10,100", "--plant", "1"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    EXPECT_NE(ran.err.find("2026-05-30"), std::string::npos) << ran.err;
}

TEST_F(Photos, AreAddedListedShownAndExported)
{
    make_home();
    const auto plant = first_plant();
    const auto id = std::to_string(plant["id"].get<int>());
    const auto added = with_home({"add", "photos", file("phone.jpg"), file("plain.png"), "--plant", id, "--json"});
    ASSERT_EQ(added.status, 0) << added.err;
    EXPECT_EQ(added.json()["added"], 2);
    EXPECT_EQ(with_home({"add", "photo", file("phone.jpg"), "--json"}).json()["known"], 1);

    const auto list = with_home({"list", "photos", "--plant", id, "--json"}).json()["photos"];
    ASSERT_EQ(list.size(), 2U);
    const auto phone = std::to_string(list[0]["id"].get<int>());
    EXPECT_EQ(list[0]["taken_from"], "exif");
    EXPECT_EQ(list[1]["taken_from"], "file_time");
    const auto shown = with_home({"show", "photo", phone, "--json"});
    ASSERT_EQ(shown.status, 0) << shown.err;
    EXPECT_TRUE(fs::exists(shown.json()["thumbnail"].get<std::string>()));

    const auto exported = with_home({"export", "photos", file("out"), "--json"});
    ASSERT_EQ(exported.status, 0) << exported.err;
    for (const auto& name : exported.json()["files"]) {
        const auto bytes = photo::read_bytes(name.get<std::string>()).value();
        EXPECT_FALSE(photo::read_facts(bytes, "exported")->exif.position);
    }
    const auto with = with_home({"export", "photos", file("out2"), "--with-position", "--plant", id, "--json"});
    const auto first = photo::read_bytes(with.json()["files"][0].get<std::string>()).value();
    EXPECT_EQ(first, photo::read_bytes(file("phone.jpg")).value());
}

TEST_F(Photos, AreCorrectedWithoutLosingAnything)
{
    make_home();
    const auto plant = std::to_string(first_plant()["id"].get<int>());
    const auto id = std::to_string(
        with_home({"add", "photos", file("plain.png"), "--json"}).json()["photos"][0]["id"].get<int>());
    const auto logged = with_home({"log", "photo", id, "--plant", plant, "--taken", "2027-05-09", "--json"});
    ASSERT_EQ(logged.status, 0) << logged.err;
    EXPECT_EQ(logged.json()["taken"], "2027-05-09T12:00:00");
    EXPECT_EQ(logged.json()["plants"].size(), 1U);
    EXPECT_EQ(with_home({"add", "photos", file("phone.jpg"), "--last-plant", "--json"}).json()["photos"][0]["plants"].size(), 1U);
    EXPECT_TRUE(with_home({"log", "photo", id, "--not-plant", plant, "--json"}).json()["plants"].empty());
    EXPECT_EQ(with_home({"log", "photo", id, "--withdraw"}).status, 0);
    EXPECT_EQ(with_home({"list", "photos", "--json"}).json()["photos"].size(), 1U);
    const auto out = with_home({"list", "photos", "--withdrawn", "--json"}).json()["photos"];
    ASSERT_EQ(out.size(), 1U);
    EXPECT_EQ(std::to_string(out[0]["id"].get<int>()), id);
    EXPECT_EQ(with_home({"list", "photos", "--withdrawn", "--plant", plant}).out, "no photo is out of the lists\n");
    EXPECT_EQ(with_home({"log", "photo", id, "--bring-back"}).status, 0);
    EXPECT_TRUE(with_home({"list", "photos", "--withdrawn", "--json"}).json()["photos"].empty());
    EXPECT_EQ(with_home({"list", "photos", "--json"}).json()["photos"].size(), 2U);
}

TEST_F(Photos, OfAFolderAreTakenAndTheDamagedNamed)
{
    make_home();
    fs::create_directories(folder_ / "in");
    photo::write_bytes(folder_ / "in" / "good.png", photo::encode_png(squares()).value());
    photo::write_bytes(folder_ / "in" / "text.jpg", photo::Bytes(100, 'x'));
    const auto ran = with_home({"add", "photos", file("in"), "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["added"], 1);
    EXPECT_EQ(ran.json()["refused"].size(), 1U);
    EXPECT_NE(ran.err.find("text.jpg"), std::string::npos);
    const auto alone = with_home({"add", "photos", file("in/text.jpg")});
    EXPECT_EQ(alone.status, 2);
    EXPECT_TRUE(is_one_clear_error(alone)) << alone.err;
}

TEST_F(Photos, StandBesideEachOtherInOnePicture)
{
    make_home();
    const auto plant = std::to_string(first_plant()["id"].get<int>());
    ASSERT_EQ(with_home({"add", "photos", file("phone.jpg"), file("plain.png"), "--plant", plant}).status, 0);
    const auto pair = with_home({"export", "comparison", file("pair.jpg"), "--photo", "1", "--photo", "2", "--height", "120", "--json"});
    ASSERT_EQ(pair.status, 0) << pair.err;
    EXPECT_GT(photo::read_facts(photo::read_bytes(file("pair.jpg")).value(), "pair")->width, 300);
    const auto strip = with_home({"export", "strip", file("strip.png"), "--plant", plant, "--count", "2", "--json"});
    ASSERT_EQ(strip.status, 0) << strip.err;
    EXPECT_EQ(strip.json()["photos"].size(), 2U);
    EXPECT_TRUE(photo::read_facts(photo::read_bytes(file("strip.png")).value(), "strip"));
    EXPECT_TRUE(with_home({"export", "strip", file("one.png"), "--plant", plant, "--count", "1"}).out.starts_with("Wrote 1 photo to "));
    EXPECT_EQ(with_home({"export", "strip", file("strip.gif"), "--plant", plant}).status, 2);
    EXPECT_EQ(with_home({"export", "comparison", file("x.jpg"), "--photo", "1"}).status, 2);
}

TEST_F(Photos, ScaleCardIsWritten)
{
    ASSERT_EQ(run_command({"export", "card", file("card.svg")}).status, 0);
    EXPECT_NE(read_text_file(file("card.svg"))->find("130mm"), std::string::npos);
}

TEST_F(Photos, WrongRequestsAreSaidInOneLine)
{
    make_home();
    for (const auto& arguments : std::vector<std::vector<std::string>>{{"show", "photo", "99"},
                                                                       {"log", "photo", "99", "--plant", "1"},
                                                                       {"log", "photo", "1"},
                                                                       {"add", "photos", file("none")},
                                                                       {"add", "photos", file("plain.png"), "--pattern", "x"},
                                                                       {"add", "photos", file("plain.png"), "--plant", "no such"},
                                                                       {"add", "photos", file("plain.png"), "--last-plant"},
                                                                       {"add", "photos", file("plain.png"), "--taken", "May"},
                                                                       {"add", "photos", file("plain.png"), "--watch"},
                                                                       {"add", "photos", std::string(5000, 'x'), "--watch"},
                                                                       {"add", "photos", std::string(5000, 'x')},
                                                                       {"add", "photos", file("plain.png"), "--every", "nan"}}) {
        const auto ran = with_home(arguments);
        EXPECT_NE(ran.status, 0) << arguments.back();
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    }
}

TEST_F(Photos, ThatCameInTogetherAreUndoneTogether)
{
    make_home();
    fs::create_directories(file("inbox"));
    photo::write_bytes(file("inbox/a.jpg"), photo::jpeg_with(photo::drawn_plant(160, 120, 3), photo::sample_exif()));
    photo::write_bytes(file("inbox/b.jpg"), photo::jpeg_with(photo::drawn_plant(160, 120, 4), photo::sample_exif()));
    const auto name = first_plant()["name"].get<std::string>();
    ASSERT_EQ(with_home({"add", "photos", file("inbox"), "--plant", name}).status, 0);
    EXPECT_EQ(with_home({"list", "photos", "--json"}).json()["photos"].size(), 2U);
    const auto undone = with_home({"log", "undo"});
    ASSERT_EQ(undone.status, 0) << undone.err;
    EXPECT_NE(undone.out.find("2 photos came in"), std::string::npos) << undone.out;
    EXPECT_EQ(with_home({"list", "photos", "--json"}).json()["photos"].size(), 0U);
    const auto again = with_home({"log", "redo", "--json"});
    ASSERT_EQ(again.status, 0) << again.err;
    EXPECT_EQ(again.json()["redone"]["entry"], "photo");
    EXPECT_EQ(again.json()["redone"]["kind"], "photos_added");
    EXPECT_EQ(again.json()["redone"]["photos"].size(), 2U);
    EXPECT_EQ(with_home({"list", "photos", "--json"}).json()["photos"].size(), 2U);
}

TEST_F(Photos, OfTheDemonstrationAreDrawnAndSound)
{
    for (const char* name : {"one", "two"}) {
        const auto made = run_command({"--on", "2027-01-10", "demo", file(name), "--photos", "6", "--json"});
        ASSERT_EQ(made.status, 0) << made.err;
        EXPECT_EQ(made.json()["photos"], 6);
        EXPECT_EQ(run_command({"--home", file(name), "check"}).status, 0);
    }
    const auto listed = [&](const char* name) {
        return run_command({"--home", file(name), "list", "photos", "--json"}).json()["photos"].dump();
    };
    EXPECT_EQ(listed("one"), listed("two")); // To the bit: the digests are the same.
    EXPECT_EQ(run_command({"--on", "2027-01-10", "demo", file("none"), "--plants", "3", "--json"}).json()["photos"], 0);
}

} // namespace
} // namespace lathhouse::cli
