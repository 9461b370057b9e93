#include "dimension.hpp"

#include <algorithm>
#include <cstdio>

namespace cotter::figures {

namespace {

constexpr double row = 6.2, tick = 2.2;

void add_tick(Figure& figure, double x, double y) { figure.add(Line{{x, y - tick}, {x, y + tick}, Pen::thick}); }

std::string whole(double value)
{
    char text[32];
    std::snprintf(text, sizeof text, "%.0f", value);
    return text;
}

// Maps a span of values onto a stretch of the sheet.
struct Scale {
    double low, high, from, to;
    double at(double value) const { return from + (std::clamp(value, low, high) - low) / (high - low) * (to - from); }
};

} // namespace

Figure limit_line(double value, double limit, const std::string& text, double width)
{
    Figure figure{width, 2 * tick + 0.6, {}};
    const double drawn = width * 0.45, y = tick + 0.3;
    const Scale scale{0, std::max({value, limit, 1.0}) * 1.08, 0, drawn};
    add_tick(figure, scale.at(limit), y);
    figure.add(Line{{0, y - 1.2}, {0, y + 1.2}, Pen::thin});
    figure.add(Arrow{{0, y}, {scale.at(value), y}});
    figure.add(Label{{drawn + 2.5, y + capital / 2}, text, Align::left, capital});
    return figure;
}

Figure range_line(double value, double least, double greatest, const std::string& text, double width)
{
    Figure figure{width, 2 * tick + 3, {}};
    const double drawn = width * 0.4, y = tick + 2.6;
    const double span = std::max(greatest - least, 1.0);
    const Scale scale{std::min(least, value) - span * 0.35, std::max(greatest, value) + span * 0.35, 0, drawn};
    figure.add(Line{{0, y}, {drawn, y}, Pen::thin});
    figure.add(Line{{scale.at(least), y}, {scale.at(greatest), y}, Pen::thick});
    add_tick(figure, scale.at(least), y);
    add_tick(figure, scale.at(greatest), y);
    figure.add(Arrow{{scale.at(value), y - tick - 2.4}, {scale.at(value), y}});
    figure.add(Label{{drawn + 2.5, y + capital / 2}, text, Align::left, capital});
    return figure;
}

Figure ranges_ladder(const std::vector<NamedRange>& ranges, double barrel, double width)
{
    Figure figure{width, row * static_cast<double>(ranges.size()) + 2, {}};
    double low = barrel, high = barrel, names = 10;
    for (const NamedRange& each : ranges) {
        low = std::min(low, each.least);
        high = std::max(high, each.greatest);
        names = std::max(names, text_width(each.name, capital));
    }
    const double margin = std::max((high - low) * 0.05, 1.0);
    const Scale scale{low - margin, high + margin, names + 3, width - 27};
    double y = row / 2 + 1;
    for (const NamedRange& each : ranges) {
        figure.add(Label{{0, y + capital / 2}, each.name, Align::left, capital});
        figure.add(Arrow{{scale.at(each.least), y}, {scale.at(each.greatest), y}, true});
        add_tick(figure, scale.at(each.least), y);
        add_tick(figure, scale.at(each.greatest), y);
        figure.add(Label{{width, y + capital / 2},
                         whole(each.least) + "\u2013" + whole(each.greatest) + " mm",
                         Align::right,
                         capital});
        y += row;
    }
    figure.add(Line{{scale.at(barrel), 0}, {scale.at(barrel), figure.height}, Pen::dashed});
    return figure;
}

} // namespace cotter::figures
