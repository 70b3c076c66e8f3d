#include "app/cli/commands.h"

#include <iostream>

int main(int argc, char** argv)
{
    const auto open_window = [](const lathhouse::cli::Globals&, const lathhouse::cli::WindowRequest&) {
        std::cerr << "lathhouse: this build has no window\n";
        return 1;
    };
    return lathhouse::cli::run(argc, argv, std::cout, std::cerr, open_window);
}
