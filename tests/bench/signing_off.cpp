#include "bench.hpp"

#include "store.hpp"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cstdio>
#include <stdexcept>

namespace cotter::bench {

namespace {

namespace fs = std::filesystem;

constexpr int checks_before = 300; // a book in use
constexpr int checks_timed = 300;
constexpr int frame_header = 24; // of each page in SQLite's log
constexpr double aim = 1.5;
constexpr rules::Instant morning{1795590000};

class Folder {
public:
    explicit Folder(const fs::path& parent) : path_{parent / ("cotter-bench-" + std::to_string(::getpid()))}
    {
        fs::create_directory(path_);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder()
    {
        std::error_code ignored;
        fs::remove_all(path_, ignored);
    }
    const fs::path& path() const { return path_; }

private:
    fs::path path_;
};

// A file that bytes are appended to and synced, as a program without a database would.
class PlainFile {
public:
    explicit PlainFile(const fs::path& path) : descriptor_{::open(path.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0600)} {}
    PlainFile(const PlainFile&) = delete;
    PlainFile& operator=(const PlainFile&) = delete;
    ~PlainFile() { ::close(descriptor_); }

    void append(std::size_t bytes)
    {
        const std::string text(bytes, 'x');
        if (::write(descriptor_, text.data(), text.size()) != static_cast<ssize_t>(text.size()) ||
            ::fsync(descriptor_) != 0)
            throw std::runtime_error{"the plain file cannot be written"};
    }

private:
    int descriptor_;
};

records::Entry check(int number)
{
    records::Entry entry;
    entry.kind = "pre_use_check";
    entry.about = "unit-" + std::to_string(number % 10);
    entry.who = entry.by = "farrow";
    entry.how = "name only";
    entry.at = morning + rules::Instant{number};
    entry.day = rules::utc_day(entry.at);
    records::Json answers = records::Json::array();
    for (const char* item : {"marking", "pin", "keeper", "jaw", "welds", "bolts", "hoses", "pads", "label", "stand"})
        answers.push_back({{"item", item}, {"answer", "right"}});
    entry.body = {{"machine", "ex-21"}, {"sheet", "attachment"}, {"edition", 1}, {"answers", std::move(answers)}};
    return entry;
}

// Bytes that SQLite has written to its log so far.
std::size_t written_by(SQLite::Database& database)
{
    int pages = 0, unused = 0;
    sqlite3_db_status(database.getHandle(), SQLITE_DBSTATUS_CACHE_WRITE, &pages, &unused, 0);
    return static_cast<std::size_t>(pages) * static_cast<std::size_t>(4096 + frame_header);
}

struct Timed {
    std::vector<double> ours, plain, ratios, bytes;
};

void time_one(db::Store& store, PlainFile& file, int number, Timed& timed)
{
    const std::size_t before = written_by(store.database());
    const double ours = time_of([&] { store.append({check(number)}); }).count();
    const std::size_t bytes = written_by(store.database()) - before;
    const double plain = time_of([&] { file.append(bytes); }).count();
    timed.ours.push_back(ours);
    timed.plain.push_back(plain);
    timed.ratios.push_back(ours / plain);
    timed.bytes.push_back(static_cast<double>(bytes));
}

} // namespace

void time_signing_off(const fs::path& parent)
{
    const Folder folder{parent};
    const auto store = db::Store::make(folder.path() / "book.db", {"bench", true, morning, rules::utc_day(morning)});
    PlainFile file{folder.path() / "plain"};
    for (int i = 0; i < checks_before; ++i)
        store->append({check(i)});
    Timed timed;
    for (int i = 0; i < checks_timed; ++i)
        time_one(*store, file, checks_before + i, timed);
    std::printf("sign off a check: %.2f ms; as many bytes (%.0f) appended and synced: %.2f ms (medians)\n",
                median(timed.ours) * 1e3, median(timed.bytes), median(timed.plain) * 1e3);
    std::printf("ratio: %.2f (median of %d pairs; aim %.1f)\n", median(timed.ratios), checks_timed, aim);
}

} // namespace cotter::bench
