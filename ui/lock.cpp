#include "lock.hpp"

#include "choice.hpp"
#include "entitled.hpp"
#include "pin.hpp"
#include "pins.hpp"
#include "title_block.hpp"
#include "written.hpp"

#include <algorithm>
#include <utility>

namespace cotter::ui {

namespace {

constexpr std::int64_t minutes_unless_said = 10; // firm's own rule

bool is_touched()
{
    const ImGuiIO& io = ImGui::GetIO();
    return io.MouseDown[0] || !io.InputQueueCharacters.empty() || is_any_key_down();
}

} // namespace

desk::Hand Lock::hand(const std::string& by)
{
    const desk::Hand hand = outside_.hand(by);
    if (by.empty() || (by != holder_ && by != once_))
        return hand;
    if (by != holder_)
        once_.clear();
    return desk::signed_by(hand);
}

void Lock::sign_in(const std::string& person, std::function<void()> then) { ask(person, true, std::move(then)); }

void Lock::sign(const std::string& person, std::function<void()> then) { ask(person, false, std::move(then)); }

void Lock::ask(const std::string& person, bool holds, std::function<void()> then)
{
    if (!desk::are_pins_asked(outside_.book) || person == holder_)
        return then();
    person_ = person;
    holds_ = holds;
    then_ = std::move(then);
    said_.clear();
    pad_.clear();
    const bool may_begin = !desk::has_anybody_a_pin(outside_.book) && desk::may_admit(outside_.book, person);
    by_ = person;
    asked_ = desk::has_pin(outside_.book, person) ? Asked::pin : may_begin ? Asked::chosen : Asked::none;
}

void Lock::choose(const std::string& by, const std::string& person, std::function<void()> then)
{
    by_ = by;
    person_ = person;
    holds_ = false;
    then_ = std::move(then);
    said_.clear();
    pad_.clear();
    asked_ = Asked::chosen;
}

double Lock::seconds_to_lock() const
{
    const auto site = desk::doc(outside_.book, "site", desk::current_site(outside_.book));
    return 60.0 * static_cast<double>(site.value("lock_minutes", minutes_unless_said));
}

// Who touches keeps it open; the touch that comes too late meets the lock. What must not be locked is locked after it.
void Lock::watch(bool may_lock)
{
    if ((holder_.empty() && once_.empty()) || asked_ == Asked::locked)
        return;
    const double now = outside_.ticks();
    if (now - touched_ < seconds_to_lock()) {
        if (is_touched())
            touched_ = now;
        return;
    }
    if (!may_lock)
        return;
    holds_ = !holder_.empty();
    by_ = person_ = holds_ ? holder_ : once_;
    holder_.clear();
    once_.clear();
    then_ = nullptr;
    said_.clear();
    pad_.clear();
    asked_ = Asked::locked;
}

void Lock::let_go()
{
    holder_.clear();
    once_.clear();
    asked_ = Asked::nothing;
}

PinPad::Words Lock::words() const
{
    const std::string name = desk::shown_name(outside_.book, person_);
    switch (asked_) {
    case Asked::chosen:
        return {say("{}: choose a PIN", name), said_.empty() ? "Six digits that nobody else knows." : said_, {"Back"}};
    case Asked::again: return {say("{}: the same PIN once more", name), said_, {"Back"}};
    case Asked::locked: return {say("Locked. {}: your PIN", name), said_, {"Somebody else", "Stop a unit"}};
    default: return {say("{}: your PIN", name), said_, {"Back", "Stop a unit"}};
    }
}

Lock::Left Lock::draw(Sheet& sheet)
{
    if (asked_ == Asked::none) {
        std::size_t page = 0;
        const Choice choice{say("{} has no PIN yet", desk::shown_name(outside_.book, person_)),
                            "A supervisor, manager or appointed person sets one: Site, People, Set a PIN.",
                            {},
                            false,
                            "Back"};
        if (!ui::draw(sheet, choice, page))
            return Left::nothing;
        asked_ = Asked::nothing;
        return Left::back;
    }
    if (asked_ == Asked::leaving)
        return leave(sheet);
    const PinPad::Press press = pad_.draw(sheet, words());
    ui::draw(sheet, title_block(outside_, "PIN OF", person_));
    if (press == PinPad::Press::way_out) {
        const bool locked = asked_ == Asked::locked;
        pad_.clear();
        const bool stops = pad_.way_out() == 1;
        if (!locked || !stops)
            asked_ = locked ? Asked::leaving : Asked::nothing;
        return stops ? Left::stop : locked ? Left::nothing : Left::back;
    }
    if (press == PinPad::Press::complete)
        take(pad_.digits());
    return Left::nothing;
}

Lock::Left Lock::leave(Sheet& sheet)
{
    std::size_t page = 0;
    const Choice choice{say("{} may have begun something that is not signed", desk::shown_name(outside_.book, person_)),
                        "For somebody else the glass begins anew, and it is lost.",
                        {{"Hold to begin anew", "", std::nullopt, false, true}},
                        false,
                        "Back"};
    const auto pressed = ui::draw(sheet, choice, page);
    ui::draw(sheet, title_block(outside_, "PIN OF", person_));
    if (!pressed)
        return Left::nothing;
    asked_ = Asked::locked;
    return *pressed == 0 ? Left::somebody_else : Left::nothing;
}

void Lock::take(const std::string& digits)
try {
    asked_ == Asked::chosen || asked_ == Asked::again ? set_it(digits) : try_it(digits);
    pad_.clear();
} catch (const records::FormError& e) {
    pad_.clear();
    said_ = e.what();
}

void Lock::try_it(const std::string& digits)
{
    desk::give_pin(outside_.book, outside_.hand(person_), person_, digits);
    open();
}

void Lock::set_it(const std::string& digits)
{
    if (asked_ == Asked::chosen) {
        records::check_pin(digits);
        chosen_ = digits;
        said_.clear();
        asked_ = Asked::again;
        return;
    }
    const bool same = digits == chosen_;
    std::fill(chosen_.begin(), chosen_.end(), '0');
    if (!same) {
        asked_ = Asked::chosen;
        throw records::FormError{"The two were not the same. Choose again."};
    }
    desk::write(outside_.book, {desk::set_pin(hand(by_), person_, digits)});
    open();
}

void Lock::open()
{
    asked_ = Asked::nothing;
    touched_ = outside_.ticks();
    if (holds_)
        holder_ = person_;
    else if (person_ == by_)
        once_ = person_;
    if (auto then = std::exchange(then_, nullptr))
        then();
}

} // namespace cotter::ui
