#include "pages.hpp"

#include "amounts.hpp"
#include "day_words.hpp"
#include "due_section.hpp"
#include "finding_words.hpp"
#include "local_time.hpp"
#include "readable.hpp"

#include <algorithm>

namespace cotter::paper {

namespace {

using desk::BoardRow;

std::optional<figures::Sign> sign_of(const std::vector<rules::Finding>& findings)
{
    std::optional<figures::Sign> sign;
    for (const auto& each : findings) {
        if (weight(each.code) == rules::Weight::stop)
            return figures::Sign::stop;
        if (weight(each.code) == rules::Weight::caution)
            sign = figures::Sign::warning;
    }
    return sign;
}

// The sentences of what stops it or is to be watched, each on a line.
std::string sentences(const std::vector<rules::Finding>& findings, const records::Book& book)
{
    std::string text;
    for (const auto& each : findings)
        if (weight(each.code) != rules::Weight::note)
            text += "\n" +
                    words::says(each, {}, [&](const std::string& id) { return desk::shown_name(book, id); }).joined();
    return text;
}

std::string latest_of(const BoardRow& row)
{
    return (row.latest ? words::long_day(*row.latest) : std::string{"no date"}) +
           (row.evidence_here ? "\ncopy here" : "\nno copy here");
}

std::string thing_of(const BoardRow& row)
{
    return row.label + "\n" + (row.model.empty() ? "" : row.model + ", ") + row.kind +
           (row.setting.empty() ? "" : "\nset to " + row.setting);
}

std::string thing_and_place(const BoardRow& row, const records::Book& book)
{
    return thing_of(row) + (row.place.empty() ? ""
                                              : "\n" + std::string{book.fact("site", row.place) ? "at " : ""} +
                                                    desk::shown_name(book, row.place));
}

class DayPage {
public:
    DayPage(const desk::SiteDay& day, const records::Book& book)
        : day_{day}, book_{book}, zone_{desk::zone_of(book, day.site)}
    {
    }

    void draw(Document& document) const
    {
        document.title("This site, this day", desk::shown_name(book_, day_.site) + ", " + words::long_day(day_.day) +
                                                  ". It says what was recorded, and no more.");
        document.heading("Lift plan");
        if (day_.plans.empty())
            document.paragraph("No lift plan is in the book.");
        for (const desk::DayPlan& each : day_.plans)
            document.paragraph(says_of(each));
        document.heading("People of the day");
        document.table(people());
        document.heading("Open stops");
        document.table(stops());
        document.heading("Units in use: report, evidence, today's check");
        document.table(units());
        document.heading("Trenches");
        document.table(trenches());
    }

private:
    std::string name(const std::string& id) const { return desk::shown_name(book_, id); }
    std::string when(rules::Instant at) const { return local_time(at, zone_); }

    static std::string says_of(const desk::DayPlan& plan)
    {
        const std::string title = plan.doc.value("title", "");
        return plan.doc.value("id", "") + (title.empty() ? "" : " (" + title + ")") + ", issue " +
               std::to_string(plan.doc.value("issue", 0)) + ", " + plan.doc.value("first_day", "?") + " to " +
               plan.doc.value("last_day", "?") + (plan.in_force ? ": in force." : ": not in force today.");
    }

    Table people() const
    {
        Table table{{{"ROLE", 2}, {"WHO", 4}, {"BRIEFED ON THIS ISSUE", 3}}, {}};
        for (const auto& each : day_.people)
            table.rows.push_back({{each.role, name(each.person), each.briefed ? "yes" : "no, by the record"},
                                  each.briefed ? std::nullopt : std::optional{figures::Sign::warning}});
        return table;
    }

    Table stops() const
    {
        Table table{{{"UNIT", 2}, {"WHY", 5}, {"CALLED BY", 3}, {"WHEN", 2.4}}, {}};
        for (const auto& each : day_.stops)
            table.rows.push_back(
                {{desk::label_of(book_, each.unit), each.why, name(each.by), when(each.at)}, figures::Sign::stop});
        return table;
    }

    std::string check_of(const desk::DayUnit& unit) const
    {
        const bool stands = unit.check == desk::CheckState::stands;
        const std::string text{unit.row.kind == "headplate"
                                   ? "checked with its attachment"
                                   : words::says_of_check(unit.is_asked(), unit.is_whole(), stands)};
        return unit.checked_at ? text + "\n" + name(unit.checked_by) + ", " + when(*unit.checked_at) : text;
    }

    Table units() const
    {
        Table table{
            {{"UNIT", 3}, {"REPORT", 2.2}, {"LAST DAY, EVIDENCE", 2.4}, {"TODAY'S CHECK AND WHAT STOPS IT", 5.2}}, {}};
        for (const auto& each : day_.units) {
            const bool to_do = each.check == desk::CheckState::none || each.check == desk::CheckState::stale;
            const auto sign = sign_of(each.row.findings);
            table.rows.push_back(
                {{each.row.place == day_.site ? thing_of(each.row) : thing_and_place(each.row, book_),
                  each.newest_report.empty()
                      ? "none"
                      : each.newest_report + (each.examined ? "\nof " + words::long_day(*each.examined) : ""),
                  latest_of(each.row), check_of(each) + sentences(each.row.findings, book_)},
                 sign    ? sign
                 : to_do ? std::optional{figures::Sign::to_do}
                         : std::nullopt});
        }
        return table;
    }

    Table trenches() const
    {
        Table table{{{"MARK", 1}, {"NEWEST INSPECTION", 5}, {"THIS SHIFT", 5}}, {}};
        for (const auto& each : day_.trenches)
            table.rows.push_back({{each.place,
                                   each.inspected_at ? name(each.inspected_by) + ", " + when(*each.inspected_at) +
                                                           (each.safe ? ": safe" : ": not safe")
                                                     : "none on record",
                                   std::string{words::says_of_trench(each.needed, each.holds)}},
                                  each.needed && !each.holds ? std::optional{figures::Sign::stop} : std::nullopt});
        return table;
    }

    const desk::SiteDay& day_;
    const records::Book& book_;
    std::string zone_;
};

int column_of(const std::string& kind)
{
    return kind == "attachment" || kind == "headplate" ? 0 : kind == "sling" || kind == "hook" ? 1 : 2;
}

std::vector<figures::DueMark> marks_of(const std::vector<BoardRow>& rows)
{
    std::vector<figures::DueMark> marks;
    for (const BoardRow& each : rows)
        if (!each.scrapped())
            marks.push_back({each.tag, each.latest ? words::short_day(*each.latest) : "no date", column_of(each.kind),
                             each.latest, sign_of(each.findings)});
    return marks;
}

Table board_table(const std::vector<BoardRow>& rows, const records::Book& book)
{
    Table table{{{"UNIT", 3.4}, {"OWNER", 2.6}, {"LAST DAY, EVIDENCE", 2.4}, {"WHAT STOPS IT OR IS TO BE WATCHED", 5}},
                {}};
    for (const BoardRow& each : rows) {
        std::string says = sentences(each.findings, book);
        table.rows.push_back(
            {{thing_and_place(each, book), each.owner, latest_of(each), says.empty() ? "" : says.substr(1)},
             sign_of(each.findings)});
    }
    return table;
}

} // namespace

std::string day_pdf(const TitleBlock& block, const desk::SiteDay& day, const records::Book& book)
{
    const DayPage page{day, book};
    return make_pdf(block, [&](Document& document) { page.draw(document); });
}

std::string board_pdf(const TitleBlock& block, const std::vector<BoardRow>& rows, const records::Book& book,
                      rules::Day today)
{
    return make_pdf(block, [&](Document& document) {
        document.title("What falls due when", words::long_day(today));
        const auto marks = marks_of(rows);
        if (!marks.empty()) {
            const auto section = figures::due_section(marks, today, document.width(), 130,
                                                      {words::short_day,
                                                       [](int left, int stops) {
                                                           return std::to_string(left) + " more are in the table; " +
                                                                  std::to_string(stops) + " of them may not lift";
                                                       },
                                                       [](int more) { return std::to_string(more) + " more"; }});
            document.figure(section.figure);
            if (section.left_out > 0)
                document.paragraph(std::to_string(section.left_out) + " more stand in the table alone.");
        }
        document.table(board_table(rows, book));
    });
}

std::string receipt_pdf(const TitleBlock& block, const records::Receipt& receipt, const std::string& to)
{
    return make_pdf(block, [&](Document& document) {
        document.title("Receipt of the book", "Given to " + to + ".");
        document.paragraph(std::to_string(receipt.head.seq) + " records; the last is " + receipt.head.hash + ".");
        document.paragraph("Keep it away from the device. Later it shows whether anything was taken out of the book or "
                           "written anew: type or scan the line below into a file, then "
                           "`cotter verify --store BOOK --receipt FILE`.");
        document.qr(to_text(receipt), 110);
        document.paragraph(to_text(receipt), Letter::small);
    });
}

} // namespace cotter::paper
