// Tables: headings on every page, rows kept together where they fit on a page, else broken between lines.

#include "document.hpp"

#include <algorithm>
#include <numeric>

namespace cotter::paper {

namespace {

constexpr double left = text_left, pad = 1.2, sign_size = 3.4, sign_room = 5;

double sign_inset(const Row& row, std::size_t column) { return column == 0 && row.sign ? sign_room : 0; }

int most_lines(const std::vector<Lines>& cells)
{
    int most = 1;
    for (const Lines& each : cells)
        most = std::max(most, each.count());
    return most;
}

} // namespace

std::vector<double> Document::lefts(const Table& table) const
{
    const double shares = std::accumulate(table.columns.begin(), table.columns.end(), 0.0,
                                          [](double sum, const Column& each) { return sum + each.share; });
    std::vector<double> places{left};
    for (const Column& each : table.columns)
        places.push_back(places.back() + each.share / shares * width());
    return places;
}

std::vector<Lines> Document::set(const Table& table, const Row& row) const
{
    const auto places = lefts(table);
    std::vector<Lines> cells;
    for (std::size_t i = 0; i < row.cells.size() && i < table.columns.size(); ++i)
        cells.push_back(
            canvas_.lines(Letter::small, row.cells[i], places[i + 1] - places[i] - 2 * pad - sign_inset(row, i)));
    return cells;
}

void Document::table_headings(const Table& table)
{
    const auto places = lefts(table);
    double height = 0;
    canvas_.colour(second);
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const Lines words = canvas_.lines(Letter::small, table.columns[i].heading, places[i + 1] - places[i] - 2 * pad);
        words.draw_all(places[i] + pad, y_ + pad);
        height = std::max(height, words.height());
    }
    canvas_.colour(ink);
    y_ += height + 2 * pad;
    canvas_.line(left, y_, left + width(), y_, thin_mm);
}

void Document::row(const Table& table, const Row& row)
{
    const auto cells = set(table, row);
    const auto places = lefts(table);
    const int lines = most_lines(cells);
    const double step = Lines{cairo_, Letter::small, "H", 10}.step(), figure = row.figure ? row.figure->height + 1 : 0;
    const auto height = [&](int count) { return step * (count - 1) + capital_mm(Letter::small) + 2 * pad + figure; };
    const auto turn = [&] {
        new_page();
        table_headings(table);
    };
    const double page = bottom_ - 40; // a whole one under its headings, and to spare; a longer row is broken anywhere
    if (height(lines) > room() && (height(lines) < page || height(3) > room()))
        turn();
    if (row.sign)
        canvas_.sign(*row.sign, left + pad + sign_size / 2, y_ + pad + capital_mm(Letter::small) / 2, sign_size);
    for (int from = 0; from < lines;) {
        const int fit =
            std::max(1, static_cast<int>((room() - figure - 2 * pad - capital_mm(Letter::small)) / step) + 1);
        const int to = std::min(lines, from + fit);
        for (std::size_t i = 0; i < cells.size(); ++i)
            for (int line = from; line < std::min(to, cells[i].count()); ++line)
                cells[i].draw(line, places[i] + pad + sign_inset(row, i), y_ + pad + step * (line - from));
        if (to == lines && row.figure && !cells.empty())
            canvas_.figure(*row.figure, places[cells.size() - 1] + pad,
                           y_ + 2 * pad + step * (cells.back().count() - from));
        y_ += height(to - from);
        from = to;
        if (from < lines)
            turn();
    }
    canvas_.colour(rule);
    canvas_.line(left, y_, left + width(), y_, thin_mm);
    canvas_.colour(ink);
}

void Document::table(const Table& table)
{
    if (table.rows.empty())
        return paragraph("None.");
    need(20);
    table_headings(table);
    for (const Row& each : table.rows)
        row(table, each);
    y_ += 2;
}

} // namespace cotter::paper
