// cotter board: what falls due when, and what is stopped.

#include "board.hpp"
#include "board_files.hpp"
#include "command.hpp"
#include "finding_words.hpp"
#include "local_time.hpp"
#include "pages.hpp"
#include "papers_out.hpp"
#include "session.hpp"
#include "title_of_paper.hpp"

#include <algorithm>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, pdf;
    Given on{"--on", ""}, within{"--within", ""};
    bool csv = false, ics = false, text = false, json = false;
};

// Due within the days, out of date, or without a date.
void keep_within(std::vector<desk::BoardRow>& rows, std::int64_t days)
{
    std::erase_if(rows, [&](const desk::BoardRow& row) { return row.days_left && *row.days_left > days; });
}

std::string latest_text(const desk::BoardRow& row)
{
    if (!row.latest)
        return "no date";
    const auto left = *row.days_left;
    return rules::to_string(*row.latest) + (left < 0    ? ", out of date"
                                            : left == 0 ? ", today"
                                                        : ", " + std::to_string(left) + " days");
}

void print_text(const std::vector<desk::BoardRow>& rows, const desk::Book& book)
{
    for (const desk::BoardRow& row : rows) {
        std::cout << row.label << "  " << row.kind << "  " << latest_text(row)
                  << (row.setting.empty() ? "" : "  set to " + row.setting) << '\n';
        for (const auto& finding : row.findings)
            if (weight(finding.code) != rules::Weight::note)
                std::cout << (weight(finding.code) == rules::Weight::stop ? "    stop: " : "    caution: ")
                          << words::says(finding, {}, [&](const std::string& id) { return desk::shown_name(book, id); })
                                 .joined()
                          << '\n';
    }
}

int run(const Options& options)
{
    Reading reading{store_or_own(options.store)};
    Session session{reading.take(), {"--at", ""}, false};
    auto& store = session.store();
    const rules::Day on = options.on.is_given() ? day(options.on) : session.day();
    const std::string zone = desk::zone_of(store, desk::current_site(store));
    const rules::Instant at = options.on.is_given() ? desk::local_instant(on, 12 * 60, zone) : session.at();
    auto rows = desk::board(store, at, on);
    if (options.within.is_given())
        keep_within(rows, whole_between(options.within, 0, 36'500));
    if (!options.pdf.empty())
        write_file(options.pdf,
                   board_pdf(title_block(store, "Due board " + rules::to_string(on), desk::current_site(store), "", at),
                             rows, store, on),
                   "--pdf");
    else if (options.csv)
        write_csv(rows, std::cout);
    else if (options.ics)
        write_calendar(rows, at, std::cout);
    else if (options.text)
        print_text(rows, store);
    else
        for (const auto& row : rows)
            print(to_json(row), true);
    return shown_from(store);
}

} // namespace

void add_board(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("board", "What falls due when, and what is stopped");
    command.option("--store", options->store, "the book (default your own)");
    command.option("--on", options->on.text, "the day (default today at the site)");
    command.option("--within", options->within.text, "only what falls due within so many days");
    const auto csv = command.flag("--csv", options->csv, "as CSV");
    command.flag("--ics", options->ics, "as a calendar").excludes(csv);
    command.option("--pdf", options->pdf, "as pages, into this new file");
    command.flag("--text", options->text, "as sentences");
    command.flag("--json", options->json, "as always: a JSON object a unit");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
