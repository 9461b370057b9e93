#include "first_steps_page.hpp"

#include "people.hpp"
#include "title_block.hpp"

#include "entitled.hpp"
#include "written.hpp"

namespace cotter::ui {

using Kind = desk::FirstStep::Kind;

namespace {

struct Said {
    const char *words, *more;
};

Said said_of(Kind kind)
{
    switch (kind) {
    case Kind::admit:
        return {"This site, and who runs it", "A site manager or an appointed person, who admits the others."};
    case Kind::sheets:
        return {"Check sheets to begin with", "Five items each; your own and the makers' take their place later."};
    case Kind::machine: return {"The machine", "Tag, owner, serial."};
    case Kind::attachment: return {"The attachment", "Tag, owner, serial, as on its plate."};
    case Kind::couple: return {"What hangs on what", "The attachment is coupled to the machine."};
    case Kind::operator_: return {"Who is on the levers", "An operator, familiarised on machine and attachment."};
    }
    return {"", ""};
}

} // namespace

void FirstSteps::admit()
{
    able_ = desk::who_may_admit(outside_.book);
    if (able_.empty()) {
        admitting_.emplace(outside_, "");
        return;
    }
    then_ = [this](const std::string& by) {
        outside_.signing.in(by, [this, by] { admitting_.emplace(outside_, by); });
    };
}

// Signed by one who may; where nobody may, somebody is admitted first.
void FirstSteps::write_sheets()
{
    able_ = who_may_write(outside_.book, "check_sheet");
    if (able_.empty())
        return admit();
    then_ = [this](const std::string& by) {
        outside_.signing.once(
            by, [this, by] { desk::write(outside_.book, desk::sheets_to_begin_with(outside_.hand(by))); });
    };
}

void FirstSteps::ask_who(Sheet& sheet)
{
    const auto pressed = ui::draw(sheet, choice_of_people(outside_.book, "Who says so?", able_), turned_);
    ui::draw(sheet, title_block(outside_, "WRITES", ""));
    if (!pressed)
        return;
    const std::vector<std::string> able = std::exchange(able_, {});
    if (*pressed < able.size())
        then_(able[*pressed]);
}

// Role, class and sheet are known; the rest is read from the plate.
void FirstSteps::begin_unit(const char* role, const char* of_class)
{
    records::Json known{{"role", role}, {"class", of_class}};
    if (const std::string sheet = std::string{"general-"} + role; outside_.book.fact("check_sheet", sheet))
        known["sheet"] = sheet;
    record_.emplace(outside_, "unit", known);
}

void FirstSteps::begin(Kind kind)
{
    switch (kind) {
    case Kind::admit:
    case Kind::operator_: return admit();
    case Kind::sheets: return write_sheets();
    case Kind::machine: return begin_unit("machine", "machine");
    case Kind::attachment: return begin_unit("attachment", "accessory");
    case Kind::couple: record_.emplace(outside_, "coupled"); return;
    }
}

void FirstSteps::draw_page(Sheet& sheet)
{
    if (!able_.empty())
        ask_who(sheet);
    else if (admitting_ && !admitting_->draw(sheet))
        admitting_.reset();
    else if (record_ && !record_->draw(sheet))
        record_.reset();
}

void FirstSteps::list(Sheet& sheet, const Box& area)
{
    const auto steps = desk::first_steps(outside_.book);
    std::vector<std::size_t> order; // the next one stands first, in the same place
    for (const bool done : {false, true})
        for (std::size_t i = 0; i < steps.size(); ++i)
            if (steps[i].done == done)
                order.push_back(i);
    std::vector<ReadLine> lines;
    for (const std::size_t i : order) {
        const Said said = said_of(steps[i].kind);
        lines.push_back({false,
                         steps[i].done   ? std::optional{figures::Sign::in_order}
                         : lines.empty() ? std::optional{figures::Sign::to_do}
                                         : std::nullopt,
                         said.words, said.more, steps[i].done ? "" : "Begin"});
    }
    lines.push_back(
        {false, std::nullopt, "Then: Cab, who is on the levers, the check",
         "A lift also asks for pipe, lift chart, lift plan and examination report: Record, Papers and data."});
    if (const auto opened = reading_.list(sheet, lines, area); opened && *opened < steps.size())
        begin(steps[order[*opened]].kind);
}

} // namespace cotter::ui
