// A chart file: what is read and written again reads the same, and every point of it can be asked for.

#include "chart_csv.hpp"
#include "bad_input.hpp"
#include "fuzzing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <sstream>

using namespace cotter;
using namespace cotter::tests;

namespace {

// Whole millimetres and kilograms as the file has them.
std::string written(const rules::Chart& chart)
{
    const auto metres = [](rules::Millimetres mm) {
        return fmt::format("{}{}.{:03}", mm.count() < 0 ? "-" : "", std::abs(mm.count()) / 1000,
                           std::abs(mm.count()) % 1000);
    };
    std::string text = "over,height_m,radius_m,rated_kg\n";
    for (const rules::Cell& cell : chart.cells)
        text +=
            fmt::format("{},{},{},{}\n", *cell.over == rules::Sector::front ? "front" : "side", metres(*cell.height),
                        metres(*cell.radius), cell.rated ? std::to_string(cell.rated->count()) : "");
    return text;
}

rules::Chart read(const std::string& text)
{
    std::istringstream in{text};
    return cli::read_chart(in, "chart");
}

// Never above what the highest cell says.
void ask(const rules::Chart& chart)
{
    rules::Kilograms highest{0};
    for (const rules::Cell& cell : chart.cells)
        highest = std::max(highest, cell.rated.value_or(highest));
    for (const rules::Cell& cell : chart.cells)
        for (const auto past : {rules::Millimetres{0}, rules::Millimetres{1}}) {
            const rules::ChartPoint point{*cell.radius + past, *cell.height + past};
            const auto rated = lowest_corner(chart, *cell.over, point);
            must(!rated || *rated <= highest, "no rating above the chart's highest");
            (void)bilinear_kg(chart, *cell.over, point);
        }
    (void)needs_lifting_devices(chart);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
try {
    const rules::Chart chart = read(text_of(data, size));
    must(!chart.cells.empty(), "a chart has cells");
    must(written(read(written(chart))) == written(chart), "what is written reads the same");
    if (chart.cells.size() < 200)
        ask(chart);
    return 0;
} catch (const cli::BadInput& e) {
    must_be_a_line(e.what());
    return 0;
}
