#pragma once

// A book of one's own, in which PINs are asked: a supervisor, an operator, a second trained person, one attachment.

#include "accept.hpp"
#include "pins.hpp"
#include "rig.hpp"
#include "written.hpp"

#include <memory>
#include <string>
#include <vector>

namespace cotter::tests {

using records::Json;

inline const std::string hallams = "402716", farrows = "958130", iqbals = "731904";

// A book of one's own: supervisor, operator and a second trained person, each with a PIN; one coupled attachment.
class OwnBook {
public:
    OwnBook()
    {
        store_ = db::Store::make(folder_.path() / "book.db", {"tablet", false, at(), rules::utc_day(at())});
        store_->accept_by(desk::accept);
        store_->check_on_opening();
        const desk::Hand hallam = hand("hallam");
        store_->append(
            {entry(hallam, "site", "s", {{"name", "S (invented)"}, {"zone", "Europe/London"}, {"lock_minutes", 5}}),
             entry(hallam, "model", "clasper-90",
                   {{"name", "Clasper 90 (invented)"},
                    {"role", "attachment"},
                    {"adjusts", true},
                    {"states", {{{"name", "hole 1"}, {"least_mm", 400}, {"greatest_mm", 600}}}}}),
             unit("cl-02", "attachment", "clasper-90"), unit("ex-21", "machine", ""),
             entry(hallam, "pipe", "p", {{"name", "DN 450 (invented)"}}),
             entry(hallam, "coupled", "ex-21", {{"attachment", "cl-02"}, {"no_hitch", true}}), person("hallam"),
             person("farrow"), person("iqbal"), admission("hallam", {"supervisor", "signaller"})});
    }
    void staff()
    {
        using desk::set_pin, desk::signed_by;
        desk::write(*store_, {set_pin(hand("hallam"), "hallam", hallams)});
        records::Entry farrow = admission("farrow", {"operator"}),
                       iqbal = admission("iqbal", {"signaller", "operator"});
        for (records::Entry* each : {&farrow, &iqbal})
            each->with_pin = true;
        desk::write(*store_, {farrow, iqbal, set_pin(signed_by(hand("hallam")), "farrow", farrows),
                              set_pin(signed_by(hand("hallam")), "iqbal", iqbals)});
    }
    db::Store& store() { return *store_; }
    std::string newest_how(const std::string& kind) { return newest(kind).how; }
    records::Entry newest(const std::string& kind) { return store_->newest(kind, 1).at(0).entry; }
    bool has(const std::string& kind) { return !store_->newest(kind, 1).empty(); }

private:
    static rules::Instant at() { return *desk::parse_instant("2026-11-25T07:50:00Z"); }
    static desk::Hand hand(const std::string& by)
    {
        desk::Hand made;
        made.by = by;
        made.at = at();
        made.day = rules::utc_day(at());
        return made;
    }
    static records::Entry unit(const std::string& id, const std::string& role, const std::string& model)
    {
        Json body{
            {"tag", id},      {"owner_firm", "F (invented)"}, {"serial", id}, {"role", role}, {"class", "accessory"},
            {"owner", "own"}, {"between_own_sites", false}};
        if (!model.empty())
            body["model"] = model;
        return entry(hand("hallam"), "unit", id, body);
    }
    static records::Entry person(const std::string& id) { return entry(hand("hallam"), "person", id, {{"name", id}}); }
    static records::Entry admission(const std::string& id, std::vector<std::string> roles)
    {
        return entry(
            hand("hallam"), "admission", id,
            {{"site", "s"}, {"card_seen", true}, {"roles", std::move(roles)}, {"setting_models", {"clasper-90"}}});
    }

    Folder folder_;
    std::unique_ptr<db::Store> store_;
};

inline void type(Rig& rig, const std::string& pin)
{
    for (const char digit : pin)
        rig.tap(std::string(1, digit));
}

} // namespace cotter::tests
