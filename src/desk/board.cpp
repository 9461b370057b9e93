#include "board.hpp"

#include "decide.hpp"
#include "lift_question.hpp"
#include "papers.hpp"
#include "standing.hpp"

#include <algorithm>
#include <tuple>

namespace cotter::desk {

using namespace rules;

namespace {

// What is said of the unit itself; whether its check is done today is asked where it is used.
bool is_of_the_unit(const Finding& finding)
{
    switch (row(finding.code)) {
    case Row::exam:
    case Row::evidence:
    case Row::unit:
    case Row::data: return true;
    case Row::check: return finding.code == Code::check_stopped || finding.code == Code::check_report;
    default: return false;
    }
}

std::string setting_of(const Book& book, const std::string& unit)
{
    std::vector<SettingRecord> changes;
    for (const Json& each : doc(book, "setting", unit).value("records", Json::array()))
        changes.push_back(records::read_setting_record(each));
    const Standing standing = standing_of(changes);
    return standing.disputed ? "disputed" : standing.state.value_or("");
}

} // namespace

BoardRow board_row(const Book& book, const std::string& unit, Instant now, Day day)
{
    const Json it = doc(book, "unit", unit);
    BoardRow row{unit,
                 it.value("tag", unit),
                 label_of(book, unit),
                 it.value("owner_firm", ""),
                 it.value("role", ""),
                 shown_name(book, it.value("model", "")),
                 setting_of(book, unit),
                 doc(book, "whereabouts", unit).value("at_site", ""),
                 {},
                 {},
                 false,
                 {}};
    const Question question = unit_question(book, unit, now, day);
    const Papers papers = papers_of(question, question.items.front(), day);
    row.latest = papers.governing.latest;
    row.evidence_here = papers.governing && is_legible_here(papers.governing.copy);
    if (row.latest)
        row.days_left = days_between(day, *row.latest).count();
    for (const Finding& finding : decide(question).findings)
        if (is_of_the_unit(finding))
            row.findings.push_back(finding);
    return row;
}

bool comes_before(const BoardRow& a, const BoardRow& b)
{
    return std::tie(a.latest, a.label) < std::tie(b.latest, b.label);
}

namespace {

Json codes(const BoardRow& row, Weight wanted)
{
    Json list = Json::array();
    for (const Finding& finding : row.findings)
        if (weight(finding.code) == wanted)
            list.push_back(std::string{name(finding.code)});
    return list;
}

} // namespace

bool BoardRow::scrapped() const
{
    return std::any_of(findings.begin(), findings.end(),
                       [](const Finding& each) { return each.code == Code::unit_scrapped; });
}

bool BoardRow::stopped() const
{
    return std::any_of(findings.begin(), findings.end(),
                       [](const Finding& each) { return weight(each.code) == Weight::stop; });
}

std::vector<BoardRow> board_of(const Book& book, const std::vector<std::string>& units, Instant now, Day day)
{
    std::vector<BoardRow> rows;
    for (const std::string& each : units)
        rows.push_back(board_row(book, each, now, day));
    std::sort(rows.begin(), rows.end(), comes_before);
    return rows;
}

std::vector<BoardRow> board(const Book& book, Instant now, Day day)
{
    return board_of(book, book.keys("unit"), now, day);
}

Json to_json(const BoardRow& row)
{
    return {{"unit", row.label},
            {"owner", row.owner},
            {"kind", row.kind},
            {"model", row.model},
            {"setting", row.setting.empty() ? Json{} : Json(row.setting)},
            {"place", row.place.empty() ? Json{} : Json(row.place)},
            {"latest", row.latest ? Json(rules::to_string(*row.latest)) : Json{}},
            {"days_left", row.days_left ? Json(*row.days_left) : Json{}},
            {"stops", codes(row, Weight::stop)},
            {"cautions", codes(row, Weight::caution)}};
}

} // namespace cotter::desk
