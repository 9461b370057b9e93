#include "app.hpp"

#include "first_steps.hpp"

#include <array>

namespace cotter::ui {

namespace {

constexpr const char* caution =
    "Cotter supports, and never replaces, the lift plan, the maker's instructions, local law and competent people.";

} // namespace

App::App(Outside outside, Door door)
    : bare_{std::move(outside)}, lock_{bare_}, outside_{with_lock()}, door_{door}, found_{outside_}
{
    begin_places();
}

Outside App::with_lock()
{
    Outside with = bare_;
    with.hand = [this](const std::string& by) { return lock_.hand(by); };
    with.find = [this] { found_.ask(); };
    with.signing = {
        [this](const auto& person, auto then) { lock_.sign_in(person, std::move(then)); },
        [this](const auto& person, auto then) { lock_.sign(person, std::move(then)); },
        [this](const auto& by, const auto& person, auto then) { lock_.choose(by, person, std::move(then)); }};
    return with;
}

// Whoever takes over begins anew; what was done is in the book.
void App::begin_places()
{
    cab_.emplace(outside_);
    site_.emplace(outside_);
    yard_.emplace(outside_);
    today_.emplace(outside_);
}

// Once it is, it is not asked again.
bool App::is_begun()
{
    is_begun_ = is_begun_ || desk::is_begun(outside_.book);
    return is_begun_;
}

void App::first_screen(Sheet& sheet)
{
    const Choice choice{"Cotter",
                        caution,
                        {{"Cab", "plant operator: check, pin, lift", std::nullopt},
                         {"Site", is_begun() ? "manager, supervisor: due, stopped, people" : "begin here: a new site",
                          is_begun() ? std::nullopt : std::optional{figures::Sign::to_do}},
                         {"Yard", "hire desk, fitter: units and papers", std::nullopt},
                         {"This day", "for whoever comes in: reads only", std::nullopt},
                         {"Stop a unit", "anyone may", figures::Sign::stop},
                         {"This glass", "night sheet, size of text, language, gloves", std::nullopt}},
                        false,
                        ""};
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "PLACE", ""));
    constexpr std::array<Door, 4> doors{Door::cab, Door::site, Door::yard, Door::today};
    if (pressed && *pressed < doors.size())
        door_ = doors[*pressed];
    else if (pressed && *pressed == doors.size())
        stop_.emplace(outside_);
    else if (pressed)
        looks_.emplace(outside_);
}

// One clear line; nothing was written.
void App::trouble(Sheet& sheet)
{
    const Choice choice{"That could not be done", trouble_, {{"Back", "", std::nullopt}}, false, ""};
    if (ui::draw(sheet, choice, turned_))
        trouble_.clear();
    ui::draw(sheet, title_block(outside_, "PLACE", ""));
}

void App::draw_door(Sheet& sheet)
{
    bool stays = true;
    switch (door_) {
    case Door::none: return first_screen(sheet);
    case Door::cab: stays = cab_->draw(sheet); break;
    case Door::site: stays = site_->draw(sheet); break;
    case Door::yard: stays = yard_->draw(sheet); break;
    case Door::today: stays = today_->draw(sheet); break;
    }
    if (!stays)
        door_ = Door::none;
}

void App::locked(Sheet& sheet)
{
    const Lock::Left left = lock_.draw(sheet);
    if (left == Lock::Left::stop)
        stop_.emplace(outside_);
    if (left != Lock::Left::somebody_else)
        return;
    lock_.let_go();
    begin_places();
}

// A tag that is read; not while a load hangs.
bool App::draw_what_is_found(Sheet& sheet)
{
    if (door_ == Door::cab && cab_->holds_a_load())
        return false;
    if (!found_.is_open() && !found_.listen(takes_digits_))
        return false;
    const InGloves in_the_cab{door_ == Door::cab};
    found_.draw(sheet);
    return true;
}

bool App::draw_what_is_asked(Sheet& sheet)
{
    if (stop_) {
        if (!stop_->draw(sheet))
            stop_.reset();
        return true;
    }
    if (looks_) {
        if (!looks_->draw(sheet))
            looks_.reset();
        return true;
    }
    lock_.watch(door_ != Door::cab || !cab_->holds_a_load());
    if (lock_.has_the_glass()) {
        locked(sheet);
        return true;
    }
    return draw_what_is_found(sheet);
}

void App::draw(Sheet& sheet)
{
    if (work_) {
        const InGloves whoever_waits{true};
        work_ended_ = ui::draw(sheet, *work_, title_) || work_ended_;
        return;
    }
    if (!trouble_.empty())
        return trouble(sheet);
    try {
        if (!draw_what_is_asked(sheet))
            draw_door(sheet);
    } catch (const std::exception& e) {
        trouble_ = e.what();
    }
    takes_digits_ = sheet.takes_digits();
    if (sheet.was_pressed()) {
        pressed_at_ = outside_.ticks();
        pressed_a_pad_ = takes_digits_;
    }
}

void App::begin_work()
{
    title_ = title_block(outside_, "PLACE", "");
    work_ended_ = false;
    press_settles();
}

// What was pressed on its page answers nothing on the page under it.
void App::end_work()
{
    work_.reset();
    press_settles();
}

void App::press_settles()
{
    pressed_at_ = outside_.ticks();
    pressed_a_pad_ = false;
}

bool App::hears_fingers() const
{
    constexpr double settling = 0.35; // s
    return outside_.ticks() - pressed_at_ >= settling;
}

double frame(App& app, const Theme& theme, const Spy& spy)
{
    ImGui::GetIO().ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard; // arrows and space
    ImGui::NewFrame();
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize(ImGui::GetIO().DisplaySize);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0);
    ImGui::Begin("sheet", nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
                     ImGuiWindowFlags_NoBringToFrontOnFocus);
    Sheet sheet{theme, spy, app.hears_fingers(), app.pressed_a_pad()};
    app.draw(sheet);
    ImGui::End();
    ImGui::PopStyleVar(2);
    ImGui::Render();
    return sheet.is_blank() ? 0 : sheet.drawn_again_in();
}

} // namespace cotter::ui
