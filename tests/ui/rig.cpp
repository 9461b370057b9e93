#include "rig.hpp"

#include "accept.hpp"
#include "register.hpp"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <stdexcept>

namespace cotter::tests {

namespace fs = std::filesystem;

namespace {

fs::path new_folder()
{
    std::string name = (fs::temp_directory_path() / "cotter-ui-XXXXXX").string();
    if (!mkdtemp(name.data()))
        throw std::runtime_error{"no folder for the sample book"};
    return name;
}

// Made once a run; each test has a copy. A closed book is one file and its key.
class Made {
public:
    Made()
    {
        const std::string make = "COTTER=" COTTER_PROGRAM " " COTTER_SOURCE "/sample_site/make " +
                                 (folder_.path() / "sample.db").string() + " --on 2026-11-25 >/dev/null";
        if (std::system(make.c_str()) != 0)
            throw std::runtime_error{"sample_site/make failed"};
    }
    void copy_to(const fs::path& folder) const
    {
        for (const char* name : {"sample.db", "sample.db.key"})
            fs::copy_file(folder_.path() / name, folder / name);
    }

private:
    Folder folder_;
};

// Letters are made once a run for each size.
struct Letters {
    ImFontAtlas atlas;
    std::unique_ptr<ui::Theme> theme;
};

Letters& theme_for(const Glass& glass)
{
    static std::map<std::pair<double, int>, Letters> all;
    words::catalogues_in(COTTER_BUILD "/locale");
    Letters& letters = all[{glass.px_per_mm, glass.looks.text_percent}];
    if (letters.theme)
        return letters;
    ImGuiContext* before = ImGui::GetCurrentContext();
    ImGuiContext* own = ImGui::CreateContext(&letters.atlas);
    ImGui::SetCurrentContext(own);
    ui::set_looks(glass.looks);
    letters.theme = std::make_unique<ui::Theme>(glass.px_per_mm);
    unsigned char* pixels = nullptr;
    int width = 0, height = 0;
    letters.atlas.GetTexDataAsAlpha8(&pixels, &width, &height);
    ImGui::DestroyContext(own);
    ImGui::SetCurrentContext(before);
    return letters;
}

} // namespace

Folder::Folder() : path_{new_folder()} {}

SampleBook::SampleBook()
{
    static const Made made;
    made.copy_to(folder_.path());
    store_ = db::Store::open(path());
    store_->accept_by(desk::accept);
    store_->check_on_opening();
}

Rig::Rig(records::Book& book, ui::Door door, Glass glass, std::function<std::string()> print_day, Pages pages)
    : now{*desk::parse_instant("2026-11-25T08:00:00Z")}, book_{book}, glass_{glass}
{
    ImGui::CreateContext(&theme_for(glass).atlas);
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = {glass.width, glass.height};
    io.DeltaTime = 1.0F / 60.0F;
    io.IniFilename = nullptr;
    ui::map_keys(io);
    ui::set_looks(glass.looks);
    theme_ = &*theme_for(glass).theme;
    const auto hand = [this, &book](const std::string& by) {
        desk::Hand made;
        made.by = by;
        made.at = now;
        made.day = desk::local_day(now, desk::zone_of(book, desk::current_site(book)));
        return made;
    };
    ui::Outside outside{book,
                        [this] { return now; },
                        hand,
                        [this, &book] { return dynamic_cast<db::Store&>(book).receipt(now); },
                        [this] { return ticks; },
                        std::move(pages),
                        {},
                        std::move(print_day)};
    outside.photos = {[this] { return photos.found ? photos.found() : std::vector<std::string>{}; },
                      [this](const std::string& path) { return photos.bytes(path); },
                      [this](const std::string& bytes) { return photos.keep(bytes); }};
    app_ = std::make_unique<ui::App>(outside, door);
    frame();
    frame(); // a list's button is there once the list is known to be longer
}

Rig::~Rig()
{
    app_.reset();
    ImGui::DestroyContext();
}

void Rig::look_on(const Glass& glass)
{
    glass_ = glass;
    Letters& letters = theme_for(glass);
    ui::set_looks(glass.looks);
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = {glass.width, glass.height};
    io.Fonts = &letters.atlas;
    theme_ = &*letters.theme;
    if (works_)
        app_->begin_work();
    frame();
    frame();
}

void Rig::show_work(const ui::Work& work)
{
    works_ = true;
    app_->begin_work();
    app_->show_work(work);
    frame();
    ticks += 1;
}

bool Rig::keyboard_is_at(const std::string& words) const
{
    return std::any_of(seen_.begin(), seen_.end(),
                       [&](const ui::Seen& each) { return each.target && each.has_keyboard && each.text == words; });
}

void Rig::frame()
{
    seen_.clear();
    again_in_ = ui::frame(*app_, *theme_, [this](const ui::Seen& each) { seen_.push_back(each); });
}

bool Rig::shows(const std::string& words) const
{
    std::string all; // over line breaks
    for (const ui::Seen& each : seen_)
        if (!each.target)
            all += each.text + " ";
    return all.find(words) != std::string::npos;
}

const ui::Seen& Rig::wanted(const std::string& words) const
{
    if (const ui::Seen* found = target(words))
        return *found;
    std::string there;
    for (const ui::Seen& each : seen_)
        there += (there.empty() ? "" : each.target ? " | " : " ") + each.text;
    throw std::runtime_error{"not on the screen: " + words + "; there is: " + there};
}

const ui::Seen* Rig::target(const std::string& words) const
{
    for (const ui::Seen& each : seen_)
        if (each.target && each.text == words)
            return &each;
    return nullptr;
}

bool Rig::turn_findings()
{
    for (const ui::Seen& each : seen_)
        if (each.target && each.text.find("more below") != std::string::npos) {
            tap_at(ui::Seen{each});
            return true;
        }
    if (target("Back to the first"))
        tap("Back to the first");
    return false;
}

// Move, press and release in frames of their own: 1.86 and later both take it.
void Rig::press(float x, float y, float to_y)
{
    ImGuiIO& io = ImGui::GetIO();
    ui::feed_pointer(io, {x, y});
    frame();
    ui::feed_press(io, true);
    frame();
    ui::feed_pointer(io, {x, to_y});
    frame();
    ui::feed_press(io, false);
    frame();
    ui::feed_pointer(io, {-1, -1});
    ticks += 1;
    now = now + rules::Instant{60};
    frame();
    frame();
}

void Rig::type(const std::string& text)
{
    ImGui::GetIO().AddInputCharactersUTF8(text.c_str());
    frame();
}

void Rig::key(ImGuiKey key)
{
    ui::feed_key(ImGui::GetIO(), key, true);
    frame();
    ui::feed_key(ImGui::GetIO(), key, false);
    frame();
    frame();
}

void Rig::tap(const std::string& words) { tap_at(wanted(words)); }

void Rig::tap_or_hold(const std::string& words) { words.starts_with("Hold to ") ? hold(words) : tap(words); }

void Rig::tap_at(const ui::Seen& target)
{
    const float x = target.x + target.w / 2, y = target.y + target.h / 2;
    press(x, y, y);
}

void Rig::hold(const std::string& words)
{
    const ui::Seen* found = &wanted(words);
    ImGuiIO& io = ImGui::GetIO();
    ui::feed_pointer(io, {found->x + found->w / 2, found->y + found->h / 2});
    frame();
    ui::feed_press(io, true);
    for (int i = 0; i < 60 && target(words); ++i)
        frame();
    ui::feed_press(io, false);
    frame();
    ui::feed_pointer(io, {-1, -1});
    ticks += 1;
    now = now + rules::Instant{60};
    frame();
    frame();
}

void Rig::drag(const std::string& words, float px)
{
    const ui::Seen* found = &wanted(words);
    const float x = found->x + found->w / 2, y = found->y + found->h / 4;
    press(x, y, y + px);
}

} // namespace cotter::tests
