#pragma once

// Site: what falls due and what is stopped now, standing places, who does what today.

#include "admitting.hpp"
#include "ahead_page.hpp"
#include "board.hpp"
#include "briefing_page.hpp"
#include "choice.hpp"
#include "compare.hpp"
#include "confirm_place.hpp"
#include "copy_page.hpp"
#include "due_page.hpp"
#include "first_steps_page.hpp"
#include "laid_page.hpp"
#include "lift_stop.hpp"
#include "outside.hpp"
#include "plan_page.hpp"
#include "plate.hpp"
#include "read_page.hpp"
#include "receive_page.hpp"
#include "record_page.hpp"
#include "title_block.hpp"
#include "today.hpp"

#include <array>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class Site {
public:
    explicit Site(const Outside& outside)
        : outside_{outside}, first_{outside}, fleet_{outside}, due_{outside, fleet_}, today_{outside}
    {
    }
    Site(const Site&) = delete;
    Site& operator=(const Site&) = delete;
    bool draw(Sheet& sheet); // false when the person goes back to the first screen

private:
    enum class Page {
        due,
        stopped,
        place,
        confirm,
        clock,
        people,
        name,
        whose_pin,
        by_whom,
        briefing,
        admit,
        compare,
        today,
        plans,
        laid,
        record,
        ahead,
        receive,
        lift_stop,
        copy,
        gone
    };
    static const std::vector<std::string> all_buttons;

    void due(Sheet& sheet);
    void stopped(Sheet& sheet);
    void look_at_stopped();
    void add_units();
    void add_device();
    void add_site();
    void clock(Sheet& sheet);
    void place(Sheet& sheet);
    void people(Sheet& sheet);
    void name(Sheet& sheet);
    void whose_pin(Sheet& sheet);
    void name_for(const std::string& role, const std::string& person);
    void begin_admitting();
    void as_admitter(std::function<void(const std::string&)> then); // with "" where nobody may admit yet
    void by_whom(Sheet& sheet);
    void buttons(Sheet& sheet, Page now, TouchScroll* list = nullptr);
    void go(Page page);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);
    std::string supervisor() const;
    records::Json roles_today() const;
    std::vector<records::Json> places() const; // of every plan in force

    const Outside& outside_;
    FirstSteps first_;
    bool is_begun_ = false; // once it is, it is not asked again
    FleetRows fleet_;       // for the due board and for what is stopped
    DuePage due_;
    Today today_;
    Page page_ = Page::due;
    std::size_t turned_ = 0;
    std::optional<Admitting> admitting_;
    std::optional<BriefingPage> briefing_;
    std::optional<Compare> compare_;
    std::optional<AheadPage> ahead_;
    std::optional<ReceivePage> receive_;
    std::optional<LiftStop> lift_stop_;
    std::optional<CopyPage> copy_;
    ReadPage reading_; // what is stopped
    std::vector<ReadLine> stopped_;
    std::map<std::size_t, std::string> notices_; // of the clock, by their lines
    std::map<std::size_t, std::string> rows_;    // units, likewise
    std::string stopped_of_;
    std::optional<PlanPage> plans_;
    std::optional<LaidPage> laid_;
    std::optional<RecordPage> record_;
    std::function<void(const std::string&)> by_whom_;
    std::string notice_;
    std::optional<ConfirmPlace> confirms_;
};

} // namespace cotter::ui
