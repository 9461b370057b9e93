#include "bundle.hpp"

#include "amounts.hpp"
#include "bundle_csv.hpp"

#include <algorithm>
#include <set>

namespace cotter::paper {

namespace {

std::size_t count(const Records& records, desk::When when)
{
    return static_cast<std::size_t>(
        std::count_if(records.begin(), records.end(), [&](const auto& each) { return each.when == when; }));
}

Table counts(const Records& records)
{
    Table table{{{"RECORDS OF", 6}, {"IN THE PERIOD", 2}, {"IN FORCE BEFORE", 2}, {"OUTSIDE", 2}}, {}};
    const auto add = [&](const std::string& says, const Records& some) {
        table.rows.push_back(
            {{says, std::to_string(count(some, desk::When::within)), std::to_string(count(some, desk::When::before)),
              std::to_string(count(some, desk::When::outside))}});
    };
    for (const std::string& kind : all_kinds())
        if (const Records some = of_kinds(records, {kind}); !some.empty())
            add(title_of(kind), some);
    add("All of them", of_kinds(records, all_kinds()));
    return table;
}

Table identity(const Readable& readable, const std::string& unit)
{
    Table table{{{"THE UNIT", 3}, {"AS IT STANDS IN THE BOOK NOW", 7}}, {}};
    const Json it = desk::doc(readable.book(), "unit", unit);
    for (const auto& [field, says] : {std::pair{"tag", "tag"},
                                      {"owner_firm", "owner"},
                                      {"serial", "maker's serial"},
                                      {"model", "model"},
                                      {"role", "role"},
                                      {"class", "class"},
                                      {"manufactured", "date of manufacture"},
                                      {"plate_kg", "rating on the plate"},
                                      {"mass_kg", "own mass"}})
        if (it.contains(field))
            table.rows.push_back(
                {{says, std::string{field} == "model" ? readable.name(it.value("model", ""))
                                                      : readable.value(property_of("unit", field), field, it[field])}});
    return table;
}

// Two firms may use the same tag, and a lift names its gear by tags.
std::string same_tag(const Readable& readable, const std::string& unit)
{
    const std::string tag = desk::tag_of(readable.book(), unit);
    std::size_t others = 0;
    for (const auto& fact : readable.book().facts("unit"))
        others += fact.key.key != unit && fact.doc.value("tag", "") == tag ? 1 : 0;
    return others == 0 ? ""
                       : "Another unit in this book has the tag " + tag + " too: lifts asked for with either are here.";
}

void draw(Document& document, const Readable& readable, const desk::UnitPeriod& period, const BundleFacts& facts)
{
    document.title("Inspector's bundle: " + readable.name(period.unit),
                   words::long_day(period.from) + " to " + words::long_day(period.to) +
                       ", both days included, by the day at the site. What was in force when the period began is here "
                       "too and says so.");
    document.table(identity(readable, period.unit));
    document.paragraph(same_tag(readable, period.unit));
    document.heading("What is in this bundle");
    document.table(counts(period.records));
    document.paragraph(
        "The same records stand as tables in the folder csv, and as they were signed in records.jsonl. hashes.txt has "
        "the SHA-256 of every file: `sha256sum -c hashes.txt` checks the files, `cotter verify --bundle FOLDER` also "
        "the signatures, and with `--store BOOK` that the book still holds every record.");
    document.paragraph("Kept by law (LOLER 1998 reg. 11): a declaration while the equipment is operated; the first "
                       "report of an accessory 2 years; a periodic report until the next or 2 years, whichever is "
                       "later.");
    draw_reports(document, readable, period.records);
    for (const Part& each : parts()) {
        document.heading(each.heading);
        document.table(each.table(readable, of_kinds(period.records, each.kinds)));
    }
    document.heading("Receipt of the book");
    document.paragraph(std::to_string(facts.receipt.head.seq) + " records; the last is " + facts.receipt.head.hash +
                       ". Keep this page: it shows later whether anything was taken out of the book.");
    document.paragraph(to_text(facts.receipt), Letter::small);
    document.qr(to_text(facts.receipt), 70);
}

// The records in the bundle and the first of each device, which has its public key; by device and number.
std::string record_lines(const records::Book& book, const desk::UnitPeriod& period)
{
    std::map<std::pair<std::string, std::int64_t>, std::string> lines;
    std::set<std::string> devices{book.state().device};
    for (const auto& each : period.records) {
        devices.insert(each.record.device);
        lines[{each.record.device, each.record.seq}] = record_line(each.record);
    }
    for (const Record& each : book.newest("device", 1'000'000))
        if (devices.count(each.device) > 0 && each.seq == 1)
            lines[{each.device, each.seq}] = record_line(each);
    std::string text;
    for (const auto& [place, line] : lines)
        text += line + "\n";
    return text;
}

} // namespace

records::Files bundle_files(const records::Book& book, const desk::UnitPeriod& period, const BundleFacts& facts)
{
    const Readable readable{book, period.records};
    records::Files files = csv_files(readable, period.records);
    files["bundle.pdf"] = make_pdf(facts.block, [&](Document& document) { draw(document, readable, period, facts); });
    files[records::records_file] = record_lines(book, period);
    return files;
}

} // namespace cotter::paper
