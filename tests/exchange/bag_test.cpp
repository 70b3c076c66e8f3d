#include "core/exchange/bag.h"

#include "core/base/sha256.h"
#include "tests/exchange/sample_zip.h"
#include "tests/journal/temporary_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <csignal>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include <sys/resource.h>

namespace lathhouse::exchange {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

class Bags : public journal::WithFolder {
protected:
    fs::path file(const std::string& name, const std::string& content) const
    {
        fs::create_directories((folder_ / name).parent_path());
        std::ofstream{folder_ / name, std::ios::binary} << content;
        return folder_ / name;
    }
    std::string content_of(const fs::path& path) const
    {
        std::ostringstream text;
        text << std::ifstream{path, std::ios::binary}.rdbuf();
        return text.str();
    }
    fs::path small_bag() const
    {
        const std::vector<BagFile> files{{"letter.txt", file("in/letter.txt", "Dear pot"), ZipWriter::Squeeze::Yes},
                                         {"photos/50% off.jpg", file("in/photo", std::string(100'000, 'p'))}};
        const auto archive = folder_ / "my bag.zip";
        EXPECT_TRUE(write_bag(archive, files, std::vector<BagLabel>{{"Contact-Name", "Nobody"}},
                              calendar::make_date(2027, 3, 1).value(), {}));
        return archive;
    }
    fs::path zip_of(const std::vector<SampleEntry>& entries) const
    {
        const auto archive = folder_ / "sample.zip";
        write_sample_zip(archive, entries);
        return archive;
    }
    /// A whole bag with those files below data/, before `more` is added.
    std::vector<SampleEntry> bag_entries(const std::vector<SampleEntry>& payload) const
    {
        std::string manifest;
        std::vector<SampleEntry> entries{{"bag/bagit.txt", "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"}};
        for (const auto& entry : payload) {
            manifest += sha256_of(entry.content) + "  data/" + entry.name + "\n";
            entries.push_back(entry);
            entries.back().name = "bag/data/" + entry.name;
        }
        entries.push_back({"bag/manifest-sha256.txt", manifest});
        return entries;
    }
    std::string refusal(const std::vector<SampleEntry>& entries, const ZipLimits& limits = {}) const
    {
        auto bag = Bag::open(zip_of(entries), limits);
        if (bag) {
            const auto compared = bag->unpack(nullptr, {}, {});
            return compared ? "taken" : compared.error().message;
        }
        return bag.error().message;
    }
};

TEST_F(Bags, GivesBackWhatWentIn)
{
    auto bag = Bag::open(small_bag());
    ASSERT_TRUE(bag) << bag.error().message;
    EXPECT_EQ(bag->files().size(), 2U);
    EXPECT_EQ(bag->bytes(), 100'008U);
    EXPECT_EQ(bag->label("Bagging-Date"), "2027-03-01");
    EXPECT_EQ(bag->label("Payload-Oxum"), "100008.2");
    EXPECT_EQ(bag->label("Contact-Name"), "Nobody");
    EXPECT_TRUE(bag->oddities().empty());
    const auto out = folder_ / "out";
    fs::create_directory(out);
    ASSERT_TRUE(bag->unpack(&out, [](const BagEntry&) { return true; }, {}));
    EXPECT_EQ(content_of(out / "letter.txt"), "Dear pot");
    EXPECT_EQ(content_of(out / "photos/50% off.jpg"), std::string(100'000, 'p'));
}

TEST_F(Bags, IsAsTheStandardHasIt)
{
    // Unpacked and compared by programs that know nothing of ours.
    const auto archive = small_bag();
    const auto shell = "cd '" + folder_.string() + "' && unzip -q 'my bag.zip' && cd my_bag && " +
                       "sed 's/%25/%/' manifest-sha256.txt | sha256sum --quiet -c && sha256sum --quiet -c tagmanifest-sha256.txt";
    if (std::system("command -v unzip sha256sum > /dev/null") != 0) {
        GTEST_SKIP() << "needs unzip and sha256sum";
    }
    EXPECT_EQ(std::system(shell.c_str()), 0);
    EXPECT_EQ(content_of(folder_ / "my_bag/bagit.txt"), "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
    EXPECT_THAT(content_of(folder_ / "my_bag/manifest-sha256.txt"), HasSubstr("  data/photos/50%25 off.jpg\n"));
}

TEST_F(Bags, EveryAlteredByteIsFound)
{
    const auto archive = small_bag();
    const auto whole = content_of(archive);
    auto letter = whole;
    letter[letter.find("ppppp") + 7] = 'q';
    file("altered.zip", letter);
    auto bag = Bag::open(folder_ / "altered.zip");
    ASSERT_TRUE(bag);
    EXPECT_EQ(bag->unpack(nullptr, {}, {}).error().code, ErrorCode::Damaged);
    for (const std::size_t length : {std::size_t{0}, std::size_t{10}, whole.size() / 2, whole.size() - 1}) {
        file("torn.zip", whole.substr(0, length));
        EXPECT_EQ(Bag::open(folder_ / "torn.zip").error().code, ErrorCode::Malformed) << length;
    }
}

TEST_F(Bags, StopsWhereItIsToldTo)
{
    const std::vector<BagFile> files{{"a", file("in/a", std::string(1'000'000, 'a'))}};
    int asked = 0;
    const auto stopped = write_bag(folder_ / "b.zip", files, {}, calendar::make_date(2027, 3, 1).value(),
                                   [&](std::uint64_t, std::uint64_t) { return ++asked > 3 ? GoOn::No : GoOn::Yes; });
    EXPECT_THAT(stopped.error().message, HasSubstr("stopped"));
    EXPECT_FALSE(fs::exists(folder_ / "b.zip"));
}

TEST_F(Bags, AFileThatIsGoneIsNamed)
{
    const std::vector<BagFile> files{{"a", folder_ / "gone.jpg"}};
    const auto failed = write_bag(folder_ / "b.zip", files, {}, calendar::make_date(2027, 3, 1).value(), {});
    EXPECT_THAT(failed.error().message, HasSubstr("gone.jpg"));
}

TEST_F(Bags, HostilePathsAreRefused)
{
    for (const char* name : {"/etc/passwd", "../up", "data/../../up", "a//b", "./a", "a/.", "C:/x", "a\\b", "..\\up", "a\nb",
                             "a\x80", "data/photos/..", ".."}) {
        EXPECT_NE(refusal({{name, "x"}}), "taken") << name;
        EXPECT_THAT(refusal({{name, "x"}}), HasSubstr("nothing was unpacked")) << name;
    }
    EXPECT_THAT(refusal({{std::string(300, 'n'), "x"}}), HasSubstr("255 bytes"));
}

TEST_F(Bags, LinksAndDevicesAreRefused)
{
    auto entries = bag_entries({{"household.sqlite3", "x"}});
    EXPECT_EQ(refusal(entries), "taken");
    for (const unsigned int mode : {0120777U, 0020666U, 0010666U, 0140777U}) {
        entries = bag_entries({{"photo", "/etc/passwd", mode}});
        EXPECT_THAT(refusal(entries), HasSubstr("link or another special file")) << mode;
    }
}

TEST_F(Bags, NamesThatClashAreRefused)
{
    EXPECT_THAT(refusal(bag_entries({{"A", "x"}, {"a", "y"}})), HasSubstr("twice"));
    EXPECT_THAT(refusal(bag_entries({{"a", "x"}, {"a/b", "y"}})), HasSubstr("twice"));
}

TEST_F(Bags, WhatUnpacksToFarMoreIsRefused)
{
    EXPECT_THAT(refusal(bag_entries({{"zeros", std::string(80'000'000, '\0')}})), HasSubstr("times its own size"));
    ZipLimits limits;
    limits.unpacked_bytes = 1000;
    EXPECT_THAT(refusal(bag_entries({{"much", std::string(2000, 'x')}}), limits), HasSubstr("more than 1000 bytes"));
    limits = {};
    limits.entries = 2;
    EXPECT_THAT(refusal(bag_entries({{"a", "x"}}), limits), HasSubstr("3 entries"));
}

TEST_F(Bags, ManifestAndFilesMustBeTheSameSet)
{
    auto more = bag_entries({{"a", "x"}});
    more.push_back({"bag/data/unlisted", "x"});
    EXPECT_THAT(refusal(more), HasSubstr("has 2 files below data/ and lists 1"));
    auto fewer = bag_entries({{"a", "x"}, {"b", "y"}});
    fewer.erase(fewer.begin() + 2);
    EXPECT_THAT(refusal(fewer), HasSubstr("is not whole"));
    auto other = bag_entries({{"a", "x"}});
    other[1].content = "y";
    EXPECT_THAT(refusal(other), HasSubstr("is not what the backup's list says"));
    auto outside = bag_entries({{"a", "x"}});
    outside.back().content += sha256_of("x") + "  bagit.txt\n";
    EXPECT_THAT(refusal(outside), HasSubstr("not below data/"));
    auto doubled = bag_entries({{"a", "x"}});
    doubled.back().content += doubled.back().content;
    EXPECT_THAT(refusal(doubled), HasSubstr("again"));
}

TEST_F(Bags, WhatIsNoBagIsRefused)
{
    EXPECT_THAT(refusal({{"letter.txt", "x"}}), HasSubstr("is no backup"));
    EXPECT_THAT(refusal({{"bag/bagit.txt", "BagIt-Version: 2.0\nTag-File-Character-Encoding: UTF-8\n"}}), HasSubstr("\"2.0\""));
    EXPECT_THAT(refusal({{"bag/bagit.txt", "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"}}), HasSubstr("manifest"));
    auto fetched = bag_entries({{"a", "x"}});
    fetched.push_back({"bag/fetch.txt", "http://example.org/a - data/b\n"});
    EXPECT_THAT(refusal(fetched), HasSubstr("fetch.txt"));
    EXPECT_EQ(Bag::open(folder_).error().code, ErrorCode::Unreadable);
    EXPECT_EQ(Bag::open(folder_ / "none.zip").error().code, ErrorCode::NotFound);
}

TEST_F(Bags, OddThingsAreTold)
{
    auto entries = bag_entries({{"a", "x"}});
    entries.push_back({"bag/bag-info.txt", "Payload-Oxum: 7.7\n"});
    auto bag = Bag::open(zip_of(entries));
    ASSERT_TRUE(bag);
    EXPECT_THAT(bag->oddities(), testing::Contains(HasSubstr("7.7")));
    entries = bag_entries({{"a", "x"}});
    entries.push_back({"bag/tagmanifest-sha256.txt",
                       sha256_of(entries[0].content) + "  bagit.txt\n" + sha256_of(entries[2].content) + "  manifest-sha256.txt\n"});
    entries.push_back({"bag/advert.txt", "x"});
    auto second = Bag::open(zip_of(entries));
    ASSERT_TRUE(second) << second.error().message;
    EXPECT_THAT(second->oddities(), testing::ElementsAre(HasSubstr("advert.txt")));
}

TEST_F(Bags, WhatIsPackedInAnotherWayIsRefused)
{
    auto entries = bag_entries({{"a", "x"}});
    entries[1].method = 12; // bzip2
    EXPECT_THAT(refusal(entries), HasSubstr("packed in a way that is not read here"));
    entries[1].method = 8;
    entries[1].flags = 0x0801;
    EXPECT_THAT(refusal(entries), HasSubstr("is encrypted"));
}

TEST_F(Bags, AFolderOfItsOwnIsNoFileAndMayNotBeOneToo)
{
    auto entries = bag_entries({{"a", "x"}});
    entries.push_back({"bag/data/photos/", "", 0040755});
    EXPECT_EQ(refusal(entries), "taken");
    entries.push_back({"bag/data/a/", "", 0040755});
    EXPECT_THAT(refusal(entries), HasSubstr("as a file and a folder"));
}

TEST_F(Bags, EntriesThatUnpackToAnotherLengthAreDamaged)
{
    for (const int said : {1, 3, 90}) {
        auto entries = bag_entries({{"a", "xy"}});
        entries[1].said_bytes = said;
        const auto says = refusal(entries);
        EXPECT_NE(says, "taken") << said;
        EXPECT_THAT(says, HasSubstr("sample.zip")) << said;
    }
}

TEST_F(Bags, TagFilesMustBeUtf8AndWithinTheirLength)
{
    auto entries = bag_entries({{"a", "x"}});
    entries[0].content = "BagIt-Version: 1.0\nTag-File-Character-Encoding: ISO-8859-1\n";
    EXPECT_THAT(refusal(entries), HasSubstr("not in UTF-8"));
    entries[0].content = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n" + std::string(300'000, '#');
    EXPECT_THAT(refusal(entries), HasSubstr("has over"));
    entries = bag_entries({{"a", "x"}});
    entries.push_back({"bag/bag-info.txt", std::string(11'000'000, '#')});
    EXPECT_THAT(refusal(entries), HasSubstr("has over 10000000 bytes"));
}

TEST_F(Bags, TheListOfListsIsHeldTo)
{
    const auto with_list = [&](const std::string& list) {
        auto entries = bag_entries({{"a", "x"}});
        entries.push_back({"bag/tagmanifest-sha256.txt", list});
        return refusal(entries);
    };
    const auto declared = bag_entries({{"a", "x"}})[0].content;
    EXPECT_EQ(with_list(sha256_of(declared) + "  bagit.txt\n"), "taken");
    EXPECT_THAT(with_list(sha256_of("other") + "  bagit.txt\n"), HasSubstr("is not what the backup's list says"));
    EXPECT_THAT(with_list(sha256_of(declared) + "  gone.txt\n"), HasSubstr("it lists \"gone.txt\" and does not have it"));
    EXPECT_THAT(with_list("no digest\n"), HasSubstr("tagmanifest-sha256.txt whose line 1 has no digest"));
}

TEST_F(Bags, AManifestThatCannotBeReadIsRefused)
{
    auto entries = bag_entries({{"a", "x"}});
    entries.back().content = sha256_of("x") + "  data/../../a\n";
    EXPECT_THAT(refusal(entries), HasSubstr("whose line 1"));
}

TEST_F(Bags, AFileInTheWayIsNotWrittenOver)
{
    auto bag = Bag::open(small_bag());
    ASSERT_TRUE(bag);
    const auto out = folder_ / "out";
    file("out/letter.txt", "mine");
    const auto all = [](const BagEntry&) { return true; };
    const auto refused = bag->unpack(&out, all, {});
    EXPECT_EQ(refused.error().code, ErrorCode::Unwritable);
    EXPECT_THAT(refused.error().message, HasSubstr("letter.txt could not be unpacked"));
    EXPECT_EQ(content_of(out / "letter.txt"), "mine");
    fs::remove(out / "letter.txt");
    file("out/photos", "a file where a folder is needed");
    EXPECT_THAT(bag->unpack(&out, all, {}).error().message, HasSubstr("photos cannot be made"));
    fs::remove_all(out);
    fs::create_directory(out);
    const auto stopped = bag->unpack(&out, all, [](std::uint64_t, std::uint64_t) { return GoOn::No; });
    EXPECT_THAT(stopped.error().message, HasSubstr("stopped"));
}

TEST_F(Bags, AFullDiskIsSaid)
{
    auto bag = Bag::open(small_bag());
    ASSERT_TRUE(bag);
    const auto out = folder_ / "out";
    fs::create_directory(out);
    const std::vector<BagFile> files{{"p", file("in/p", std::string(100'000, 'p'))}};
    // A limit on the size of files stands for the full disk; the system refuses the write in the same way.
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    rlimit small = before;
    small.rlim_cur = 16 * 1024;
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
    const auto unpacked = bag->unpack(&out, [](const BagEntry&) { return true; }, {});
    const auto written = write_bag(folder_ / "b.zip", files, {}, calendar::make_date(2027, 3, 1).value(), {});
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
    ASSERT_FALSE(unpacked);
    EXPECT_EQ(unpacked.error().code, ErrorCode::Unwritable);
    EXPECT_THAT(unpacked.error().message, HasSubstr("make room"));
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Unwritable);
    EXPECT_THAT(written.error().message, HasSubstr("make room"));
    EXPECT_FALSE(fs::exists(folder_ / "b.zip"));
}

TEST_F(Bags, WhereNothingMayBeWrittenItIsSaid)
{
    const std::vector<BagFile> files{{"p", file("in/p", "p")}};
    const auto written = write_bag(folder_ / "none/b.zip", files, {}, calendar::make_date(2027, 3, 1).value(), {});
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Unwritable) << written.error().message;
}

} // namespace
} // namespace lathhouse::exchange
