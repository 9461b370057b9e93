#include "a_shift.hpp"

#include "decide.hpp"
#include "decision_form.hpp"

namespace cotter::tests {

using namespace desk;
using records::Json;

namespace {

class Day {
public:
    explicit Day(int pipes) : pipes_{pipes} {}
    std::vector<std::vector<Entry>> entries()
    {
        stock();
        rig_up();
        check_and_set();
        for (int i = 0; i < pipes_; ++i)
            lift();
        trouble();
        sign({stand_down(hand("farrow"), "shift 1")});
        return std::move(done_);
    }

private:
    Hand hand(const std::string& by)
    {
        Hand hand;
        hand.by = by;
        hand.at = now_ = now_ + rules::Instant{60};
        hand.day = rules::utc_day(now_);
        return hand;
    }
    void sign(std::vector<Entry> entries) { done_.push_back(std::move(entries)); }
    void sign(const std::string& by, const std::string& kind, const std::string& about, Json body)
    {
        sign({entry(hand(by), kind, about, std::move(body))});
    }

    void stock()
    {
        const Hand quill = hand("quill");
        sign({entry(quill, "site", "s", {{"name", "Marsh Lane (invented)"}, {"zone", "Europe/London"}}),
              entry(quill, "person", "farrow", {{"name", "I. Farrow (invented)"}}),
              entry(quill, "person", "hallam", {{"name", "O. Hallam (invented)"}}),
              entry(quill, "pipe", "sk-450", {{"name", "DN 450 (invented)"}, {"barrel_mm", 584}})});
    }
    void rig_up()
    {
        sign("farrow", "shift", "shift 1",
             {{"site", "s"}, {"start", now_.count()}, {"end", now_.count() + 36'000}, {"last_day", "2026-11-25"}});
        sign("hallam", "people_today", "s", {{"day", "2026-11-25"}, {"roles", {{"supervisor", "hallam"}}}});
        sign("farrow", "coupled", "ex-21", {{"attachment", "cl-02"}, {"no_hitch", true}});
        sign({prove_devices(hand("farrow"), "ex-21", true, true)});
        sign({confirm_place(hand("hallam"), "s", "B", true, true, true, true)});
    }
    void check_and_set()
    {
        const Json right = {
            {"answers", {{{"item", "hoses"}, {"answer", "right"}}, {{"item", "pads"}, {"answer", "right"}}}}};
        sign("farrow", "pre_use_check", "ex-21", right);
        sign("farrow", "pre_use_check", "cl-02", right);
        sign({change_the_setting(hand("farrow"), "cl-02", "hole 1")});
        sign({see_the_setting(hand("hallam"), "cl-02", "hole 1")});
        sign("farrow", "pre_use_check", "cl-02", right);
    }
    void lift()
    {
        rules::Question question;
        question.id = "lift";
        const Entry asked =
            ask_for_a_lift(hand("farrow"), question, {{"outcome", "may_lift"}, {"findings", Json::array()}});
        sign({asked});
        for (const char* step : {"picked_up", "set_down", "lift_done"})
            sign({lift_step(hand("farrow"), step, asked.about)});
    }
    void trouble()
    {
        sign({something_happened(hand("farrow"), "touch", "cl-02", "the trench box")});
        sign({call_a_stop(hand("hallam"), "cl-02", "pad loose")});
        sign("hallam", "person", "farrow", {{"name", "I. M. Farrow (invented)"}});
    }

    int pipes_;
    rules::Instant now_{1795590000}; // 2026-11-25T07:00:00Z
    std::vector<std::vector<Entry>> done_;
};

} // namespace

std::vector<std::vector<records::Entry>> a_shift(int pipes) { return Day{pipes}.entries(); }

} // namespace cotter::tests
