#pragma once

// Drives the screens without a display: frames on a context of its own, taps and drags by what stands on the screen.

#include "app.hpp"
#include "local_time.hpp"
#include "store.hpp"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace cotter::tests {

// A folder of its own, gone at its end.
class Folder {
public:
    Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

// A sample book of 2026-11-25, made afresh by sample_site/make.
class SampleBook {
public:
    SampleBook();
    ~SampleBook() { store_.reset(); }
    SampleBook(const SampleBook&) = delete;
    SampleBook& operator=(const SampleBook&) = delete;
    db::Store& store() { return *store_; }
    std::filesystem::path path() const { return folder_.path() / "sample.db"; }

private:
    Folder folder_;
    std::unique_ptr<db::Store> store_;
};

struct Glass {
    float width = 1280, height = 800;
    double px_per_mm = 5.88;
    ui::Looks looks = {};
};

class Rig {
public:
    using Pages = std::function<std::optional<std::string>(const std::string& sha256)>;
    Rig(records::Book& book, ui::Door door, Glass glass = {}, std::function<std::string()> print_day = {},
        Pages pages = {});
    ~Rig();
    Rig(const Rig&) = delete;
    Rig& operator=(const Rig&) = delete;

    void frame();
    double again_in() const { return again_in_; }        // s after which the last frame wanted another by itself
    void tap(const std::string& words);                  // throws if it is not on the screen
    void tap_or_hold(const std::string& words);          // as its words ask
    void tap_at(const ui::Seen& target);                 // where several have the same words
    void hold(const std::string& words);                 // a button that must be held
    void drag(const std::string& words, float px);       // presses on it, moves down by px, lets go
    void type(const std::string& text);                  // on a keyboard, or by a scanner that types
    void key(ImGuiKey key);                              // pressed and let go
    bool keyboard_is_at(const std::string& words) const; // the frame that shows where it stands
    bool shows(const std::string& words) const;          // a text that holds these words
    const ui::Seen* target(const std::string& words) const;
    bool turn_findings(); // the Cab's next findings; false where there is no such button, or after the last
    const std::vector<ui::Seen>& seen() const { return seen_; }
    const ui::Theme& theme() const { return *theme_; }
    ui::App& app() { return *app_; }
    void show_work(const ui::Work& work); // and its title block on each glass anew: no language changes meanwhile
    Glass glass() const { return glass_; }
    const records::Book& book() const { return book_; }
    void look_on(const Glass& glass); // the same page on another glass, until the next

    ui::Photos photos;     // that can be taken along
    double ticks = 10;     // a second goes by with each tap
    rules::Instant now{0}; // the clock of the screens; a minute goes by with each tap

private:
    const ui::Seen& wanted(const std::string& words) const; // throws if it is not on the screen
    void press(float x, float y, float to_y);

    const records::Book& book_;
    Glass glass_;
    const ui::Theme* theme_ = nullptr; // of that glass
    std::unique_ptr<ui::App> app_;
    bool works_ = false;
    std::vector<ui::Seen> seen_;
    double again_in_ = 0;
};

} // namespace cotter::tests
