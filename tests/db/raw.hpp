#pragma once

// SQLite as any other program uses it: with its own defaults and none of our settings.

#include <sqlite3.h>

#include <filesystem>
#include <stdexcept>
#include <string>

namespace cotter::tests {

class Raw {
public:
    explicit Raw(const std::filesystem::path& path)
    {
        if (sqlite3_open(path.c_str(), &handle_) != SQLITE_OK)
            throw std::runtime_error{path.string() + " cannot be opened"};
    }
    Raw(const Raw&) = delete;
    Raw& operator=(const Raw&) = delete;
    ~Raw()
    {
        sqlite3_exec(handle_, triggers_.c_str(), nullptr, nullptr, nullptr);
        sqlite3_close(handle_);
    }

    // What SQLite says against it; "" if it was done.
    std::string refusal(const std::string& sql)
    {
        char* text = nullptr;
        const bool done = sqlite3_exec(handle_, sql.c_str(), nullptr, nullptr, &text) == SQLITE_OK;
        const std::string said = text ? text : done ? "" : "not done";
        sqlite3_free(text);
        return said;
    }

    void run(const std::string& sql)
    {
        if (const std::string said = refusal(sql); !said.empty())
            throw std::runtime_error{sql + ": " + said};
    }

    // The first column of all rows, a line each.
    std::string text(const std::string& sql)
    {
        std::string lines;
        const auto add = [](void* out, int, char** columns, char**) {
            *static_cast<std::string*>(out) += std::string{columns[0] ? columns[0] : "null"} + "\n";
            return 0;
        };
        if (sqlite3_exec(handle_, sql.c_str(), add, &lines, nullptr) != SQLITE_OK)
            throw std::runtime_error{sql + ": " + sqlite3_errmsg(handle_)};
        return lines.empty() ? "" : lines.substr(0, lines.size() - 1);
    }

    // The file keeps its -wal when this connection closes.
    void leave_the_log() { sqlite3_db_config(handle_, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr); }

    // They come back when this connection closes.
    void drop_triggers()
    {
        triggers_ = text("SELECT sql || ';' FROM sqlite_schema WHERE type = 'trigger'");
        run("DROP TRIGGER record_is_never_changed; DROP TRIGGER record_is_never_removed; DROP TRIGGER record_twice");
    }

private:
    sqlite3* handle_ = nullptr;
    std::string triggers_;
};

} // namespace cotter::tests
