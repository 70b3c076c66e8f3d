#pragma once

#include <nlohmann/json.hpp>

#include <array>
#include <cctype>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <stdexcept>
#include <string>

#include <sys/wait.h>
#include <unistd.h>

namespace lathhouse::sheet {

struct Ran {
    int status;
    std::string out;
    std::string err;
};

inline std::string content_of(const std::filesystem::path& file)
{
    std::ifstream input{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{input}, {}};
}

/// A folder of the test's own, gone with it.
class Folder {
public:
    Folder()
    {
        static int count = 0;
        path_ = std::filesystem::temp_directory_path() /
                ("lathhouse-sheet-" + std::to_string(::getpid()) + "-" + std::to_string(count++));
        std::filesystem::create_directories(path_);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder()
    {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

/// Runs a command of the shell, without a display.
inline Ran run_shell(const std::string& command, const Folder& folder)
{
    const auto err = folder.path() / "stderr";
    const std::string line = "env -u DISPLAY -u WAYLAND_DISPLAY LC_ALL=C.UTF-8 " + command + " 2>" + err.string();
    FILE* pipe = ::popen(line.c_str(), "r");
    if (pipe == nullptr) {
        throw std::runtime_error("no shell");
    }
    std::string out;
    std::array<char, 65536> buffer{};
    std::size_t count = 0;
    while ((count = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0) {
        out.append(buffer.data(), count);
    }
    const int status = ::pclose(pipe);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, out, content_of(err)};
}

/// The program on the date of all these tests.
inline Ran run_program(const std::string& arguments, const Folder& folder)
{
    return run_shell(std::string{LATHHOUSE_PROGRAM} + " --on 2026-03-14 " + arguments, folder);
}

/// A demonstration household, written once, shared by the tests.
struct Demonstration {
    explicit Demonstration(const std::string& options)
    {
        made = run_program("demo " + home() + " " + options, folder);
    }
    std::string home() const { return (folder.path() / "home").string(); }
    std::string file(const std::string& name) const { return (folder.path() / name).string(); }
    Ran run(const std::string& arguments) const { return run_program("--home " + home() + " " + arguments, folder); }
    nlohmann::json json(const std::string& arguments) const
    {
        return nlohmann::json::parse(run(arguments + " --json").out);
    }
    /// The words of a sheet, one blank between any two.
    std::string words_of(const std::string& name) const
    {
        return in_one_line(run_shell("pdftotext -layout " + file(name) + " -", folder).out);
    }
    std::string facts_of(const std::string& name) const
    {
        return in_one_line(run_shell("pdfinfo " + file(name), folder).out);
    }
    static std::string in_one_line(const std::string& text)
    {
        std::istringstream words{text};
        std::string line;
        for (std::string word; words >> word;) {
            line += (line.empty() ? "" : " ") + word;
        }
        return line;
    }

    Folder folder;
    Ran made;
};

inline const Demonstration& usual()
{
    static const Demonstration shown{""};
    return shown;
}

} // namespace lathhouse::sheet
