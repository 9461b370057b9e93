// Who signs gives a PIN; tries are records; what never asks for one.

#include "accept.hpp"
#include "entitled.hpp"
#include "pin.hpp"
#include "pins.hpp"
#include "register.hpp"
#include "store.hpp"
#include "written.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>

using namespace cotter;
using namespace cotter::desk;
using records::Json;

TEST_SUITE_BEGIN("pins");

namespace {

namespace fs = std::filesystem;

const std::string quills_pin = "402716", farrows_pin = "958130", other_pin = "731904";

// A book of one's own, no sample: a manager, a supervisor and an operator are admitted; nobody has a PIN.
class OwnBook {
public:
    OwnBook()
    {
        std::string name = (fs::temp_directory_path() / "cotter-pins-XXXXXX").string();
        folder_ = mkdtemp(name.data());
        db::Store::make(path(), {"tablet", false, at, rules::utc_day(at)});
        open();
        const Hand first = hand("quill");
        store_->append({entry(first, "site", "s", {{"name", "S (invented)"}, {"zone", "Europe/London"}}),
                        entry(first, "unit", "cl-02",
                              {{"tag", "CL-02"},
                               {"owner_firm", "F (invented)"},
                               {"serial", "1"},
                               {"role", "attachment"},
                               {"class", "accessory"},
                               {"owner", "own"},
                               {"between_own_sites", false}}),
                        person("quill"), person("hallam"), person("farrow"), admission("quill", {"manager"})});
    }
    OwnBook(const OwnBook&) = delete;
    OwnBook& operator=(const OwnBook&) = delete;
    ~OwnBook()
    {
        store_.reset();
        fs::remove_all(folder_);
    }

    void open()
    {
        store_.reset();
        store_ = db::Store::open(path());
        store_->accept_by(accept);
        store_->check_on_opening();
    }
    // Manager and operator have a PIN; supervisor and operator are admitted.
    void staff()
    {
        write(*store_, {set_pin(hand("quill"), "quill", quills_pin)});
        Entry hallam = admission("hallam", {"supervisor"}), farrow = admission("farrow", {"operator"});
        for (Entry* each : {&hallam, &farrow}) {
            each->who = each->by = each->how = "";
            each->who = each->by = "quill";
            each->how = "pin";
            each->with_pin = true;
        }
        write(*store_, {hallam, farrow, set_pin(signed_by(hand("quill")), "farrow", farrows_pin)});
    }
    db::Store& store() { return *store_; }
    fs::path path() const { return fs::path{folder_} / "book.db"; }
    Hand hand(const std::string& by) const
    {
        Hand made;
        made.by = by;
        made.at = at;
        made.day = rules::utc_day(at);
        return made;
    }
    std::string refused_pin(const std::string& who, const std::string& pin)
    {
        try {
            give_pin(*store_, hand(who), who, pin);
            return "";
        } catch (const records::FormError& e) {
            return e.what();
        }
    }
    std::string refused(Entry entry)
    {
        try {
            write(*store_, {std::move(entry)});
            return "";
        } catch (const records::FormError& e) {
            return e.what();
        }
    }

    rules::Instant at{1795590000}; // 2026-11-25T07:00:00Z

private:
    Entry person(const std::string& id) const
    {
        return entry(hand("quill"), "person", id, {{"name", id + " (invented)"}});
    }
    Entry admission(const std::string& id, std::vector<std::string> roles) const
    {
        return entry(hand("quill"), "admission", id, {{"site", "s"}, {"card_seen", true}, {"roles", std::move(roles)}});
    }

    std::string folder_;
    std::unique_ptr<db::Store> store_;
};

std::string bytes_of(const fs::path& file)
{
    std::ifstream in{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

const Json stop = {{"why", "bent"}}, lifts_it = {{"why", "straight"}};

Entry walks_the_place(const Hand& hand) { return confirm_place(hand, "s", "B", true, true, true, true); }

} // namespace

TEST_CASE("a PIN is six digits that are not all the same and do not count")
{
    for (const char* good : {"402716", "000001", "112233"})
        CHECK_NOTHROW(records::check_pin(good));
    for (const char* bad : {"", "12345", "1234567", "40271a", "40 716", "111111", "123456", "654321", "４02716"})
        CHECK_THROWS_AS(records::check_pin(bad), records::FormError);
}

TEST_CASE("the first PIN of a book is set by one who may admit people, and for himself")
{
    OwnBook book;
    CHECK(are_pins_asked(book.store()));
    CHECK(says(book.refused(set_pin(book.hand("farrow"), "farrow", farrows_pin)), "farrow"));
    CHECK(says(book.refused(set_pin(book.hand("quill"), "farrow", farrows_pin)), "has not given a PIN"));
    CHECK(book.refused(set_pin(book.hand("quill"), "quill", quills_pin)) == "");
    CHECK(says(book.refused(set_pin(book.hand("quill"), "quill", other_pin)), "has not given a PIN"));
}

TEST_CASE("once somebody is admitted nothing is written by name alone, but for what never asks")
{
    OwnBook book;
    CHECK(says(book.refused(walks_the_place(book.hand("quill"))), "has not given a PIN"));
    book.staff();
    CHECK(says(book.refused(walks_the_place(book.hand("farrow"))), "has not given a PIN"));
    CHECK(book.refused(walks_the_place(signed_by(book.hand("farrow")))) == "");
    CHECK(book.refused(entry(book.hand("farrow"), "stop_called", "cl-02", stop)) == "");
    CHECK(book.refused(something_happened(book.hand("farrow"), "knock", "cl-02", "a dent")) == "");
    Entry claims = walks_the_place(book.hand("farrow"));
    claims.how = "pin";
    CHECK(says(book.refused(claims), "without the PIN"));
}

TEST_CASE("what another says is signed by the PIN of who writes it down")
{
    OwnBook book;
    book.staff();
    Entry told = walks_the_place(signed_by(book.hand("quill")));
    told.who = "farrow";
    CHECK(says(book.refused(told), "\"seen\", \"phone\" or \"copy\""));
    told.how = "phone";
    CHECK(book.refused(told) == "");
    told.with_pin = false;
    CHECK(says(book.refused(told), "has not given a PIN"));
}

TEST_CASE("a right PIN is a record, a wrong one too, and neither holds the digits or the hash")
{
    OwnBook book;
    book.staff();
    CHECK(book.refused_pin("farrow", farrows_pin) == "");
    CHECK(book.store().newest("pin_tried", 1).front().entry.body["right"] == true);
    CHECK(says(book.refused_pin("farrow", quills_pin), "4 tries are left"));
    const auto tried = book.store().newest("pin_tried", 9);
    CHECK(tried.size() == 2);
    CHECK(tried.front().entry.body["right"] == false);
    CHECK_FALSE(says(book.store().newest("pin_set", 1).front().bytes, "argon2"));
    for (const auto& file : fs::directory_iterator{book.path().parent_path()})
        for (const std::string& pin : {quills_pin, farrows_pin})
            CHECK_FALSE(says(bytes_of(file.path()), pin));
}

TEST_CASE(
    "after five wrong ones there is a wait that grows, also for the right one, and ending the program does not end it")
{
    OwnBook book;
    book.staff();
    for (int i = 0; i < 4; ++i)
        CHECK(says(book.refused_pin("farrow", other_pin), "left"));
    CHECK(says(book.refused_pin("farrow", other_pin), "30 seconds"));
    book.open();
    CHECK(says(book.refused_pin("farrow", farrows_pin), "30 seconds"));
    CHECK(book.store().newest("pin_tried", 9).size() == 5); // what must wait is no try
    book.at = book.at + rules::Instant{29};
    CHECK(wait_seconds(book.store(), "farrow", book.at) == 1);
    book.at = book.at + rules::Instant{1};
    CHECK(says(book.refused_pin("farrow", other_pin), "60 seconds"));
    book.at = book.at + rules::Instant{60};
    CHECK(says(book.refused_pin("farrow", other_pin), "2 minutes"));
    book.at = book.at + rules::Instant{120};
    CHECK(book.refused_pin("farrow", farrows_pin) == "");
    CHECK(says(book.refused_pin("farrow", other_pin), "4 tries are left"));
}

TEST_CASE("the wait never exceeds an hour, and another's tries are another's")
{
    OwnBook book;
    book.staff();
    for (int i = 0; i < 40; ++i)
        book.store().append({entry(book.hand("farrow"), "pin_tried", "farrow", {{"right", false}})});
    CHECK(wait_seconds(book.store(), "farrow", book.at) == 3600);
    CHECK(wait_seconds(book.store(), "quill", book.at) == 0);
    CHECK(book.refused_pin("quill", quills_pin) == "");
}

TEST_CASE("a supervisor sets a PIN anew; the old one ends, and the tries begin anew")
{
    OwnBook book;
    book.staff();
    for (int i = 0; i < 5; ++i)
        book.refused_pin("farrow", other_pin);
    write(book.store(), {set_pin(signed_by(book.hand("quill")), "hallam", "620418")});
    CHECK(book.refused(set_pin(signed_by(book.hand("hallam")), "farrow", other_pin)) == "");
    CHECK(says(book.refused_pin("farrow", farrows_pin), "4 tries"));
    CHECK(book.refused_pin("farrow", other_pin) == "");
    CHECK(says(book.refused(set_pin(signed_by(book.hand("farrow")), "quill", "551902")), "set another's PIN"));
    CHECK(book.refused(set_pin(signed_by(book.hand("farrow")), "farrow", farrows_pin)) == ""); // one's own
}

TEST_CASE("who has no PIN gives none")
{
    OwnBook book;
    book.staff();
    CHECK(says(book.refused_pin("hallam", "620418"), "has none yet"));
    CHECK(book.store().newest("pin_tried", 1).empty());
}

TEST_CASE("what an author may not write is refused in one line, and the refusal is a record")
{
    OwnBook book;
    book.staff();
    const auto before = book.store().state().head.seq;
    const std::string why =
        book.refused(entry(signed_by(book.hand("farrow")), "person", "new", {{"name", "N (invented)"}}));
    CHECK(says(why, "may not record person"));
    CHECK(why.find('\n') == std::string::npos);
    CHECK(book.store().state().head.seq == before + 1);
    const auto kept = book.store().newest("refused", 1).front().entry;
    CHECK(kept.by == "farrow");
    CHECK(kept.how == "pin"); // which he had given
    CHECK(kept.about == "new");
    CHECK(kept.body["kind"] == "person");
    CHECK_FALSE(says(kept.body.dump(), "N (invented)")); // nor what was to be kept apart
    CHECK(says(book.refused(entry(signed_by(book.hand("farrow")), "stop_lifted", "cl-02", lifts_it)), "stop"));
    CHECK(book.store().state().head.seq == before + 1); // bad form is no refusal of a person
}

TEST_CASE("each of two who move a pin signs with the own PIN")
{
    OwnBook book;
    book.staff();
    write(book.store(), {change_the_setting(signed_by(book.hand("farrow")), "cl-02", "hole 1")});
    Entry second = see_the_setting(signed_by(book.hand("quill")), "cl-02", "hole 1");
    second.who = "hallam";
    second.how = "seen";
    write(book.store(), {second});
    const Json records = doc(book.store(), "setting", "cl-02")["records"];
    CHECK(records[0]["own_pin"] == true);
    CHECK(records[1]["own_pin"] == false); // told is not signed
}

TEST_SUITE_END();
