#include "core/photo/scale_card.h"

#include <sstream>

namespace lathhouse::photo {

std::string scale_card_svg()
{
    constexpr int kLeft = 15;    // Millimetres from the card's left edge to the ruler's zero.
    constexpr int kRuler = 62;   // Down to the ruler's line.
    constexpr int kLength = 100; // Of the ruler.
    std::ostringstream svg;
    svg << "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
           "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"130mm\" height=\"80mm\" viewBox=\"0 0 130 80\">\n"
           "<title>Scale card, 100 mm</title>\n"
           "<rect x=\"0.25\" y=\"0.25\" width=\"129.5\" height=\"79.5\" fill=\"#ffffff\" stroke=\"#000000\" "
           "stroke-width=\"0.2\"/>\n"
           // Half of what the eye calls white: 18 % of the light.
           "<rect x=\"15\" y=\"8\" width=\"40\" height=\"34\" fill=\"#767676\"/>\n"
           "<g font-family=\"sans-serif\" font-size=\"3.2\" fill=\"#000000\">\n"
           "<text x=\"60\" y=\"13\">Scale card</text>\n"
           "<text x=\"60\" y=\"19\">Print at 100 %, without fitting to the page.</text>\n"
           "<text x=\"60\" y=\"25\">Check: the targets are 100 mm apart.</text>\n"
           "<text x=\"60\" y=\"31\">Stand it upright beside the stem, as far</text>\n"
           "<text x=\"60\" y=\"36\">from the camera as what you measure.</text>\n"
           "<text x=\"60\" y=\"42\">Grey patch: for the colour of the light.</text>\n";
    for (int centimetre = 0; centimetre <= kLength / 10; ++centimetre) {
        svg << "<text x=\"" << kLeft + 10 * centimetre << "\" y=\"" << kRuler - 8.5
            << "\" text-anchor=\"middle\">" << centimetre << "</text>\n";
    }
    svg << "</g>\n<g stroke=\"#000000\" stroke-width=\"0.15\">\n";
    for (int millimetre = 0; millimetre <= kLength; ++millimetre) {
        const double tall = millimetre % 10 == 0 ? 7.0 : millimetre % 5 == 0 ? 5.0 : 3.0;
        svg << "<line x1=\"" << kLeft + millimetre << "\" y1=\"" << kRuler << "\" x2=\"" << kLeft + millimetre
            << "\" y2=\"" << kRuler - tall << "\"/>\n";
    }
    svg << "<line x1=\"" << kLeft << "\" y1=\"" << kRuler << "\" x2=\"" << kLeft + kLength << "\" y2=\"" << kRuler
        << "\"/>\n</g>\n";
    for (const int at : {kLeft, kLeft + kLength}) {
        // Four quarters meet in the point to click at, which stays sharp in a small photo.
        svg << "<circle cx=\"" << at << "\" cy=\"" << kRuler + 8 << "\" r=\"5\" fill=\"#ffffff\" stroke=\"#000000\" "
            << "stroke-width=\"0.3\"/>\n<path d=\"M" << at << " " << kRuler + 8 << " v-5 a5 5 0 0 1 5 5 z M" << at << " "
            << kRuler + 8 << " v5 a5 5 0 0 1 -5 -5 z\" fill=\"#000000\"/>\n";
    }
    svg << "</svg>\n";
    return svg.str();
}

} // namespace lathhouse::photo
