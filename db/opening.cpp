#include "opening.hpp"

#include "migrate.hpp"
#include "store_error.hpp"

#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

#include <array>
#include <fstream>
#include <string>

namespace cotter::db {

namespace {

namespace fs = std::filesystem;

constexpr int wal_format = 2; // bytes 18 and 19 of a database in WAL mode

StoreError foreign(const fs::path& path)
{
    return StoreError{path.string() + ": not a Cotter book; a file that Cotter made is accepted"};
}

void refuse_before_opening(const fs::path& path)
{
    if (fs::is_directory(path))
        throw foreign(path);
    std::ifstream in{path, std::ios::binary};
    if (!in)
        throw StoreError{path.string() + ": cannot be read; a file that you may read and write is accepted"};
    std::array<char, 20> start{};
    in.read(start.data(), start.size());
    const bool sqlite = in && std::string_view{start.data(), 15} == "SQLite format 3";
    if (!sqlite || start[18] != wal_format || start[19] != wal_format)
        throw foreign(path);
    if (fs::exists(path.string() + "-journal"))
        throw StoreError{path.string() + "-journal stands beside the book; a book that only Cotter wrote is accepted"};
}

void configure(SQLite::Database& database, int option, int value)
{
    int now = -1;
    if (sqlite3_db_config(database.getHandle(), option, value, &now) != SQLITE_OK || now != value)
        throw StoreError{"SQLite does not take a setting that the book needs (" + std::to_string(option) + ")"};
}

void set(SQLite::Database& database, const std::string& pragma, const std::string& value, const std::string& reads_as)
{
    database.exec("PRAGMA " + pragma + " = " + value);
    if (database.execAndGet("PRAGMA " + pragma).getString() != reads_as)
        throw StoreError{"SQLite does not take " + pragma + " = " + value};
}

void limit(SQLite::Database& database, int which, int most)
{
    sqlite3_limit(database.getHandle(), which, most);
    if (sqlite3_limit(database.getHandle(), which, -1) != most)
        throw StoreError{"SQLite does not take a limit that the book needs (" + std::to_string(which) + ")"};
}

void set_defences(SQLite::Database& database)
{
    configure(database, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1);
    configure(database, SQLITE_DBCONFIG_DEFENSIVE, 1);
    configure(database, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0);
    configure(database, SQLITE_DBCONFIG_ENABLE_FTS3_TOKENIZER, 0);
    configure(database, SQLITE_DBCONFIG_DQS_DML, 0);
    configure(database, SQLITE_DBCONFIG_DQS_DDL, 0);
    configure(database, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0);
    set(database, "locking_mode", "EXCLUSIVE", "exclusive");
}

void set_durability(SQLite::Database& database)
{
    set(database, "journal_mode", "WAL", "wal");
    set(database, "synchronous", "FULL", "2");
    set(database, "foreign_keys", "ON", "1");
    set(database, "recursive_triggers", "ON", "1");
    set(database, "cell_size_check", "ON", "1");
    if (database.execAndGet("PRAGMA mmap_size = 0").getInt() != 0)
        throw StoreError{"SQLite does not take mmap_size = 0"};
    limit(database, SQLITE_LIMIT_LENGTH, 64 * 1024 * 1024);
    limit(database, SQLITE_LIMIT_EXPR_DEPTH, 100);
    limit(database, SQLITE_LIMIT_ATTACHED, 0);
    configure(database, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 0);
}

void refuse_foreign_or_newer(SQLite::Database& database, const fs::path& path)
{
    if (database.execAndGet("PRAGMA application_id").getInt() != application_id)
        throw foreign(path);
    const int version = version_of(database);
    if (version > newest_version())
        throw StoreError{path.string() + ": written by a newer Cotter (tables " + std::to_string(version) +
                         "); up to " + std::to_string(newest_version()) + " is accepted"};
}

StoreError told(const fs::path& path, const SQLite::Exception& e)
{
    if (e.getErrorCode() == SQLITE_BUSY)
        return StoreError{path.string() + ": open in another program; close it there first"};
    if (e.getErrorCode() == SQLITE_NOTADB)
        return foreign(path);
    return StoreError{path.string() + ": " + e.what()};
}

[[noreturn]] void tell(const fs::path& path, const SQLite::Exception& e)
{
    if (e.getErrorCode() == SQLITE_CORRUPT)
        throw DamagedError{path.string() + ": damaged (" + e.what() + ")"};
    throw told(path, e);
}

// An opening that is refused leaves the folder as it was.
class LeavesNoLog {
public:
    explicit LeavesNoLog(const fs::path& path) : log_{path.string() + "-wal"}, was_there_{fs::exists(log_)} {}
    LeavesNoLog(const LeavesNoLog&) = delete;
    LeavesNoLog& operator=(const LeavesNoLog&) = delete;
    ~LeavesNoLog()
    {
        std::error_code ignored;
        if (!was_there_ && !opened_ && fs::file_size(log_, ignored) == 0 && !ignored)
            fs::remove(log_, ignored);
    }
    void opened() { opened_ = true; }

private:
    fs::path log_;
    bool was_there_, opened_ = false;
};

} // namespace

std::unique_ptr<SQLite::Database> open_file(const fs::path& given)
{
    std::error_code none;
    const fs::path path = fs::canonical(given, none);
    if (none)
        throw StoreError{given.string() + ": no such book; a book that `cotter record` or a screen made is accepted"};
    refuse_before_opening(path);
    LeavesNoLog leaves_no_log{path};
    try {
        auto database =
            std::make_unique<SQLite::Database>(path.string(), SQLite::OPEN_READWRITE | SQLITE_OPEN_NOFOLLOW);
        set_defences(*database);
        refuse_foreign_or_newer(*database, path);
        set_durability(*database);
        migrate(*database);
        leaves_no_log.opened();
        return database;
    } catch (const SQLite::Exception& e) {
        tell(path, e);
    }
}

std::unique_ptr<SQLite::Database> make_file(const fs::path& path)
try {
    auto database = std::make_unique<SQLite::Database>(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    set_defences(*database);
    set(*database, "application_id", std::to_string(application_id), std::to_string(application_id));
    set_durability(*database);
    migrate(*database);
    return database;
} catch (const SQLite::Exception& e) {
    throw told(path, e);
}

} // namespace cotter::db
