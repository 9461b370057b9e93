// A store's file with bytes changed and pages moved. Five bytes of input are one change: page, place in it (two), what
// is done, with what. Opening is done or refused; what is found sound has every record, reads as before, and the stop
// that was called stands; nothing can be lifted whatever was changed.

#include "store.hpp"
#include "db/power/folder.hpp"
#include "db/stores/load.hpp"
#include "decide.hpp"
#include "fuzzing.hpp"
#include "lift_question.hpp"
#include "store_error.hpp"

#include <algorithm>

using namespace cotter;
using namespace cotter::tests;

namespace {

constexpr std::size_t page = 4096;
constexpr int newest = 4;
constexpr rules::Instant now{1795600000}; // after the last record

const Folder& folder()
{
    static const Folder folder{"fuzz"};
    return folder;
}

struct Sound {
    std::string bytes, tables;
    records::Receipt receipt;
};

Sound make_sound()
{
    load_store(COTTER_STORES, newest, folder().book());
    Sound sound;
    {
        const auto store = db::Store::open(folder().book());
        sound.receipt = store->receipt(now);
        sound.tables = store->derived_tables();
    }
    sound.bytes = bytes_of(folder().book());
    return sound;
}

const Sound& sound()
{
    static const Sound sound = make_sound();
    return sound;
}

void change(std::string& bytes, const std::uint8_t* edit)
{
    const std::size_t pages = bytes.size() / page;
    if (pages == 0)
        return;
    const std::size_t start = edit[0] % pages * page, other = edit[4] % pages * page;
    const std::size_t at = start + (edit[1] * 256U + edit[2]) % page;
    switch (edit[3] % 6) {
    case 0: bytes[at] = static_cast<char>(bytes[at] ^ (1 << edit[4] % 8)); break;
    case 1: bytes[at] = static_cast<char>(edit[4]); break;
    case 2: bytes[at] = static_cast<char>(bytes[at] + (edit[4] % 2 == 0 ? 1 : -1)); break;
    case 3: // a page in another's place
        std::copy_n(bytes.begin() + static_cast<std::ptrdiff_t>(other), page,
                    bytes.begin() + static_cast<std::ptrdiff_t>(start));
        break;
    case 4: // a run of noughts
        std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(at), std::min<std::size_t>(edit[4], bytes.size() - at),
                    '\0');
        break;
    default: bytes.resize(edit[4] == 7 ? at : bytes.size()); // cut off; seldom
    }
}

bool is_stopped(const db::Store& store)
{
    desk::LiftAsked asked;
    asked.unit = "cl-02";
    asked.machine = "ex-21";
    asked.pipe = "sk-450";
    asked.on_the_levers = "farrow";
    asked.now = now;
    const rules::Decision decision = decide(lift_question(store, asked));
    must(!decision.may_lift(), "nothing can be lifted");
    return std::any_of(decision.findings.begin(), decision.findings.end(), [](const rules::Finding& finding) {
        return finding.code == rules::Code::unit_quarantined && finding.about == "CL-02";
    });
}

// What a reader asks of a store that is known to be damaged may fail, but not otherwise than by an exception.
void read_damaged(const db::Store& store)
try {
    (void)is_stopped(store);
    (void)store.derived_tables();
} catch (const std::exception&) {
}

void read_sound(db::Store& store)
{
    const db::Verified found = store.verify();
    const bool whole = store.compare(sound().receipt).empty();
    must(!whole || is_stopped(store), "the stop stands");
    if (!whole || !found.damaged.empty())
        return;
    must(store.derived_tables() == sound().tables, "the tables read as before");
    must(store.private_value("person hallam", "name").value_or("O. Hallam (invented)") == "O. Hallam (invented)",
         "a name reads as before, or is gone");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
try {
    std::string bytes = sound().bytes;
    for (std::size_t i = 0; i + 5 <= size; i += 5)
        change(bytes, data + i);
    for (const char* ending : {"-wal", "-shm"})
        fs::remove(folder().book().string() + ending);
    write_bytes(folder().book(), bytes);
    const auto store = db::Store::open(folder().book());
    store->check_on_opening();
    store->state().damaged ? read_damaged(*store) : read_sound(*store);
    return 0;
} catch (const db::StoreError& e) {
    must_be_a_line(e.what());
    return 0;
}
