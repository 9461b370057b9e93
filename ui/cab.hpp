#pragma once

// The Cab: a shift at the machine, one thing at a time.

#include "cab_sheet.hpp"
#include "call_page.hpp"
#include "card_view.hpp"
#include "photo_page.hpp"
#include "receive_page.hpp"

#include "decide.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class Cab {
public:
    explicit Cab(const Outside& outside) : outside_{outside} {}

    // Draws the page and does what was asked; false when the operator has stood down or gone back to the first screen.
    bool draw(Sheet& sheet);

    bool holds_a_load() const
    {
        return page_ == Page::card || page_ == Page::lift || page_ == Page::load_up;
    } // or may: no screen locks then

private:
    enum class Page {
        who,
        shift,
        machine,
        pipe,
        sheet,
        look,
        move,
        set_to,
        second,
        second_look,
        check,
        failed,
        lock,
        clears,
        report,
        report_unit,
        report_photo,
        receive,
        call,
        standing,
        card,
        card_no,
        card_ends,
        lift,
        load_up,
        refused,
        stand_down,
        receipt,
        gone
    };

    void draw_page(Sheet& sheet);
    void choose_person(Sheet& sheet);
    void take_the_levers(const std::string& person);
    void start_shift(Sheet& sheet);
    void choose_machine(Sheet& sheet);
    void choose_pipe(Sheet& sheet);
    void work(Sheet& sheet);
    void act(const CabPressed& pressed, const CabSheet& view, std::size_t fit);
    void act_on(const rules::Finding& finding);
    void look(Sheet& sheet);
    void step_of_move(Sheet& sheet);
    void choose_state(Sheet& sheet);
    void choose_second(Sheet& sheet);
    void second_look(Sheet& sheet);
    void begin_check(const std::string& first); // a unit's tag, or ""
    void check(Sheet& sheet);
    void say_what_now(Sheet& sheet);
    void answer(const std::string& said);
    void finish_line();
    void sign_answers();
    void look_at_lock(Sheet& sheet);
    void explain(Sheet& sheet);
    void report(Sheet& sheet);
    void report_unit(Sheet& sheet);
    void report_photo(Sheet& sheet);
    void write_report(const std::vector<std::string>& photos);
    std::string shift_summary() const;
    void ask_for_lift();
    void choose_standing(Sheet& sheet);
    void begin_card();
    void card(Sheet& sheet);
    void card_no(Sheet& sheet);
    void card_ends(Sheet& sheet);
    void lift(Sheet& sheet);
    void load_up(Sheet& sheet);
    void refused(Sheet& sheet);
    void confirm_stand_down(Sheet& sheet);
    void receipt(Sheet& sheet);

    void go(Page page);
    void write(records::Entry entry);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);
    bool is_settled() const; // a second tap of a double one falls on the next page, and is none
    bool is_in_shift() const;
    std::string lift_still_up() const; // by the record, whoever asked for it; "": none
    void think(); // the question and its decision, anew if the book, the second or what is asked changed
    records::Json model() const;
    Choice states_choice(const std::string& question) const;
    std::string hitch() const;
    desk::LiftAsked asked() const;
    std::vector<records::Json> marks() const; // of all plans in force

    const Outside& outside_;
    Page page_ = Page::who;
    double opened_ = 0; // the page, by the clock that only runs on
    std::size_t turned_ = 0, first_ = 0;
    std::string operator_, machine_, unit_, standing_, pipe_;
    std::size_t step_ = 0;
    std::string second_;
    std::vector<ToCheck> to_check_;
    std::size_t line_ = 0;
    std::vector<desk::CheckAnswer> answers_;
    std::optional<rules::Finding> explained_;
    std::string answered_, reported_, reported_unit_, lift_;
    std::optional<PhotoPage> photo_;
    std::optional<ReceivePage> receive_;
    std::optional<CallPage> call_;
    std::vector<words::CardPoint> card_; // of the lift that was asked for
    std::string count_;                  // of pipes laid, when it was asked for
    std::size_t point_ = 0;              // of the card
    bool is_whole_card_ = true;
    std::string what_then_; // where a hold point fails
    records::Receipt receipt_;
    rules::Question question_;
    rules::Decision decision_;
    std::string thought_of_;
};

} // namespace cotter::ui
