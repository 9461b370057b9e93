#pragma once

// Site: what falls due and what is stopped now, standing places, who does what today.

#include "admitting.hpp"
#include "ahead_page.hpp"
#include "board.hpp"
#include "choice.hpp"
#include "compare.hpp"
#include "due_page.hpp"
#include "first_steps_page.hpp"
#include "laid_page.hpp"
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
    explicit Site(const Outside& outside) : outside_{outside}, first_{outside}, due_{outside}, today_{outside} {}
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
        admit,
        compare,
        today,
        plans,
        laid,
        record,
        ahead,
        receive,
        gone
    };
    static const std::vector<std::string> all_buttons;

    void due(Sheet& sheet);
    void stopped(Sheet& sheet);
    void look_at_stopped();
    void add_units();
    void add_device();
    void clock(Sheet& sheet);
    void place(Sheet& sheet);
    void confirm(Sheet& sheet);
    void people(Sheet& sheet);
    void name(Sheet& sheet);
    void whose_pin(Sheet& sheet);
    void name_for(const std::string& role, const std::string& person);
    void begin_admitting();
    void as_admitter(std::function<void(const std::string&)> then); // with "" where nobody may admit yet
    void by_whom(Sheet& sheet);
    void buttons(Sheet& sheet, Page now);
    void go(Page page);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);
    const std::vector<desk::BoardRow>& rows();
    std::string supervisor() const;
    records::Json roles_today() const;
    std::vector<records::Json> places() const; // of every plan in force

    const Outside& outside_;
    FirstSteps first_;
    bool is_begun_ = false; // once it is, it is not asked again
    DuePage due_;
    Today today_;
    Page page_ = Page::due;
    std::size_t turned_ = 0;
    std::optional<Admitting> admitting_;
    std::optional<Compare> compare_;
    std::optional<AheadPage> ahead_;
    std::optional<ReceivePage> receive_;
    ReadPage reading_; // what is stopped
    std::vector<ReadLine> stopped_;
    std::map<std::size_t, std::string> notices_; // of the clock, by their lines
    std::string stopped_of_;
    std::optional<PlanPage> plans_;
    std::optional<LaidPage> laid_;
    std::optional<RecordPage> record_;
    std::function<void(const std::string&)> by_whom_;
    std::string place_, notice_;
    std::vector<bool> confirmed_;
    std::vector<desk::BoardRow> rows_;
    std::string rows_of_;
};

} // namespace cotter::ui
