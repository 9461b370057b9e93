#include "title_block.hpp"

#include "amounts.hpp"
#include "local_time.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double line_mm = 10.2;

bool in_two_rows(const Sheet& sheet) { return sheet.width() < 200; }

// How long ago somebody else had a receipt of the book.
std::string witnessed(const records::Book& book, rules::Instant now)
{
    const auto receipt = book.fact("witness", book.state().device);
    if (!receipt)
        return say("not witnessed");
    const std::int64_t hours = std::max<std::int64_t>(0, now.count() - receipt->at) / 3600;
    return hours < 1    ? say("witnessed just now")
           : hours < 48 ? say("witnessed {} h ago", hours)
                        : say("witnessed {} d ago", hours / 24);
}

// Records that nobody else has a receipt of yet.
std::string still_to_send(const records::Book& book)
{
    const records::BookState state = book.state();
    const std::int64_t elsewhere = desk::doc(book, "witness", state.device).value("records", std::int64_t{0});
    const std::string count = state.head.seq > elsewhere ? std::to_string(state.head.seq - elsewhere) : say("nothing");
    return state.sample ? count + " \u00b7 " + say("SAMPLE") : count;
}

} // namespace

TitleBlock title_block(const Outside& outside, const std::string& role, const std::string& person)
{
    const auto& book = outside.book;
    const std::string site = desk::current_site(book), zone = desk::zone_of(book, site);
    const rules::Instant now = outside.now();
    const auto state = book.state();
    TitleBlock block;
    block.cells = {
        {"SITE", site.empty() ? "none yet" : desk::shown_name(book, site)},
        {"DAY", words::long_day(desk::local_day(now, zone)) + " " + words::clock_time(desk::local_minutes(now, zone))},
        {role, person.empty() ? "-" : desk::shown_name(book, person)},
        {"RECORD", std::to_string(state.head.seq) + " \u00b7 " + witnessed(book, now)},
        {"TO SEND", still_to_send(book)}};
    return block;
}

double title_height(const Sheet& sheet) { return in_two_rows(sheet) ? 2 * line_mm : line_mm; }

void draw(Sheet& sheet, const TitleBlock& block)
{
    const bool two = in_two_rows(sheet);
    const std::vector<double> shares =
        two ? std::vector<double>{0.56, 0.44, 0.38, 0.38, 0.24} : std::vector<double>{0.27, 0.215, 0.19, 0.195, 0.13};
    const double top = sheet.height() - title_height(sheet);
    sheet.fill({0, top, sheet.width(), title_height(sheet)}, colours().sheet);
    sheet.line(0, top, sheet.width(), top, thin_mm);
    double x = 0, y = top;
    for (std::size_t i = 0; i < block.cells.size(); ++i) {
        if (two && i == 2) {
            x = 0;
            y += line_mm;
            sheet.line(0, y, sheet.width(), y, thin_mm);
        }
        if (x > 0)
            sheet.line(x, y, x, y + line_mm, thin_mm);
        const double w = shares[i] * sheet.width();
        sheet.text(x + 1.7, y + 1.4, Letter::small, block.cells[i].label, colours().second);
        const bool fits = sheet.width_of({Letter::second, true}, block.cells[i].text) <= w - 2.5;
        sheet.wrapped({x + 1.7, y + (fits ? 5.6 : 5.9), w - 2.5, 4},
                      fits ? Lettering{Letter::second, true} : Lettering{Letter::small, true}, block.cells[i].text, 1);
        x += w;
    }
}

} // namespace cotter::ui
