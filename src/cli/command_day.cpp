// cotter day: this site, this day, for whoever comes in at the gate. Reads only.

#include "amounts.hpp"
#include "command.hpp"
#include "finding_words.hpp"
#include "language.hpp"
#include "local_time.hpp"
#include "memory_book.hpp"
#include "pages.hpp"
#include "papers_out.hpp"
#include "readable.hpp"
#include "session.hpp"
#include "site_day.hpp"
#include "title_of_paper.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, site, pdf, as;
    Given on{"--on", ""}, at{"--at", ""};
    bool text = false, json = false;
};

std::string site_of(const Options& options, const records::Book& book)
{
    const std::string site = options.site.empty() ? desk::current_site(book) : options.site;
    if (!book.fact("site", site))
        throw BadInput{site.empty()
                           ? "no site is in this book; `cotter record site` writes one"
                           : "--site: \"" + site + "\" is not in this book; the id of a site in it is accepted"};
    return site;
}

// The end of that day: what was known by then.
rules::Instant end_of(rules::Day day, const std::string& zone)
{
    return desk::local_instant(day + date::days{1}, 0, zone) - rules::Instant{1};
}

void print_text(const Json& day, const desk::SiteDay& it, const records::Book& book)
{
    std::cout << day["site"].get<std::string>() << ", " << words::long_day(it.day) << '\n';
    if (day["plans"].empty())
        std::cout << "  no lift plan\n";
    for (const Json& plan : day["plans"])
        std::cout << "  plan " << plan["id"].get<std::string>() << " issue " << plan["issue"]
                  << (plan["in_force"] == true ? ", in force" : ", not in force today") << '\n';
    for (const desk::DayPlan& plan : it.plans)
        for (const desk::Reason& each : plan.changes)
            std::cout << "    outside of it now: " << one_line(words::said(each)) << '\n';
    for (const Json& each : day["people"])
        std::cout << "  " << each["role"].get<std::string>() << ": " << each["person"].get<std::string>()
                  << (each["briefed"] == true ? "" : ", not briefed by the record") << '\n';
    for (const Json& each : day["stops"])
        std::cout << "  stop: " << each["unit"].get<std::string>() << ", " << each["why"].get<std::string>() << ", "
                  << each["by"].get<std::string>() << '\n';
    for (const auto& each : it.units) {
        const Json unit = day["units"][static_cast<std::size_t>(&each - it.units.data())];
        std::cout << each.row.label << "  " << (each.row.latest ? "to " + words::long_day(*each.row.latest) : "no date")
                  << (each.row.evidence_here ? ", copy here" : ", no copy here") << "  check "
                  << unit["check"].get<std::string>()
                  << (unit["checked_by"].is_null() ? "" : ", " + unit["checked_by"].get<std::string>()) << '\n';
        for (const auto& finding : each.row.findings)
            if (weight(finding.code) == rules::Weight::stop)
                std::cout << "    stop: "
                          << words::says(finding, {}, [&](const std::string& id) { return desk::shown_name(book, id); })
                                 .joined()
                          << '\n';
    }
    for (const Json& each : day["trenches"])
        std::cout << "mark " << each["place"].get<std::string>() << ": "
                  << (each["needed"] == false ? "nobody goes in"
                      : each["holds"] == true ? "inspected this shift"
                                              : "not found safe this shift")
                  << '\n';
}

void show(const Options& options, const records::Book& book, const std::string& site, rules::Instant at)
{
    if (!book.fact("site", site))
        throw BadInput{"--on, --at: \"" + options.on.text + options.at.text +
                       "\" is before this site stands in the book; a later one is accepted"};
    const desk::SiteDay day = desk::site_day(book, site, at);
    if (!options.pdf.empty()) {
        const std::string title = "This site, this day: " + rules::to_string(day.day);
        write_file(options.pdf, day_pdf(title_block(book, title, day.site, options.as, day.at), day, book), "--pdf");
        return;
    }
    const Json json = to_json(day, book);
    if (options.text)
        print_text(json, day, book);
    else
        print(json, true);
}

int run(const Options& options)
{
    Reading reading{store_or_own(options.store)};
    Session session{reading.take(), options.at, false};
    const auto& store = session.store();
    const std::string site = site_of(options, store), zone = desk::zone_of(store, site);
    if (options.at.is_given())
        show(options, desk::book_at(store, session.at()), site, session.at());
    else if (options.on.is_given())
        show(options, desk::book_on(store, day(options.on)), site, end_of(day(options.on), zone));
    else
        show(options, store, site, session.at());
    return shown_from(store);
}

} // namespace

void add_day(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("day", "This site, this day: units, checks, plan, people, trenches, stops");
    command.option("--store", options->store, "the book (default your own)");
    command.option("--site", options->site, "the site (default that of the newest shift)");
    const auto on = command.option("--on", options->on.text, "the day, as its end knew it (default now)");
    command.option("--at", options->at.text, "instant asked about, YYYY-MM-DDThh:mm:ssZ").excludes(on);
    command.option("--as", options->as, "who prints it");
    const auto pdf = command.option("--pdf", options->pdf, "as a page, into this new file");
    command.flag("--text", options->text, "as sentences").excludes(pdf);
    command.flag("--json", options->json, "as always without --text or --pdf: one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
