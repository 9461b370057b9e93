#pragma once

// The Cab: a shift at the machine, one thing at a time.

#include "cab_sheet.hpp"
#include "call_page.hpp"
#include "card_view.hpp"
#include "clear_defect.hpp"
#include "confirm_place.hpp"
#include "copy_page.hpp"
#include "laid_page.hpp"
#include "lift_stop.hpp"
#include "photo_page.hpp"
#include "phrases.hpp"
#include "receive_page.hpp"

#include "decide.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

extern const char* const being_changed; // how a setting stands while its pin is drawn

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
        checked,
        answer_words,
        failed,
        lock,
        clears,
        clear_defect,
        lift_stop,
        copy,
        confirm_place,
        record,
        laid,
        briefing,
        report,
        report_unit,
        report_words,
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
    void answer_words(Sheet& sheet);
    void note_answer(const std::string& note);
    static const std::vector<const char*>& what_is_wrong();
    void finish_line();
    void sign_answers();
    void look_at_lock(Sheet& sheet);
    void explain(Sheet& sheet);
    std::string who_may(rules::Code code) const;
    void briefing(Sheet& sheet);
    void record(Sheet& sheet);
    void laid(Sheet& sheet);
    bool open_form_that_clears(const rules::Finding& finding);
    std::string touch_of(const std::string& unit) const;
    bool is_at_a_mark() const;
    std::string supervisor() const;                       // of the day; "": nobody is named
    bool open_what_clears(const rules::Finding& finding); // false where nothing here does
    void report(Sheet& sheet);
    void report_unit(Sheet& sheet);
    void report_photo(Sheet& sheet);
    void report_words(Sheet& sheet);
    void write_report(const std::string& what, const std::vector<std::string>& photos);
    std::string unit_of(const std::string& tag) const; // of the load path; "": not of it
    void nothing_to_check(Sheet& sheet);
    std::string shift_summary() const;
    void ask_for_lift();
    void choose_standing(Sheet& sheet);
    void begin_card();
    std::string count_in_words() const; // of pipes laid
    void card(Sheet& sheet);
    void card_no(Sheet& sheet);
    void card_ends(Sheet& sheet);
    void lift(Sheet& sheet);
    void load_up(Sheet& sheet);
    std::string first_finding() const; // its headline
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
    std::optional<Phrases> reported_as_;
    std::optional<PhotoPage> photo_;
    std::optional<ReceivePage> receive_;
    std::optional<CallPage> call_;
    std::optional<ClearDefect> clears_;
    std::optional<LiftStop> lifts_stop_;
    std::optional<CopyPage> copy_;
    std::optional<ConfirmPlace> confirms_;
    std::optional<RecordPage> record_;
    std::optional<LaidPage> laid_log_;
    rules::CardFacts facts_; // of the card, when the lift was asked for
    struct Laid {
        int all = 0, of_it = 0;
    } laid_;                             // pipes of this shift, then
    std::size_t point_ = 0, not_so_ = 0; // of the card; the line of it that is not so
    records::Receipt receipt_;
    rules::Question question_;
    rules::Decision decision_;
    rules::Instant holds_until_{0};  // the answer, if nothing else happens
    std::string thought_of_, worst_; // worst_: the headline of the first finding
};

} // namespace cotter::ui
