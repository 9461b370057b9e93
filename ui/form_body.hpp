#pragma once

// A record's body with its kind's schema, and the place in it that is open: a part, a list, or one of a list.

#include "book.hpp"
#include "form.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

// Has it fields of its own? Is it a list?
bool is_part(const records::Json& schema);
bool is_list(const records::Json& schema);

class FormBody {
public:
    FormBody(records::Json schema, records::Json body) : schema_(std::move(schema)), body_(std::move(body)) {}

    struct Line {
        std::string key, name, value;
        const records::Json* schema;
        bool needed; // and not there, or not all of it
    };
    std::vector<Line> lines(const records::Book& book) const; // of what is open

    const records::Json& body() const { return body_; }
    const records::Json& schema_here() const;
    records::Json here() const;                        // {} or [] where nothing is known yet
    records::Json value(const std::string& key) const; // null where it is not known
    std::string place(const std::string& title) const; // what is open, with its place where it is one of a list
    bool is_whole() const { return path_.empty(); }    // nothing of it is open
    bool is_of_a_list() const;

    void open(const std::string& key) { path_.push_back(key); }
    void go_up() { path_.pop_back(); }
    void put(const std::string& key, records::Json value); // null: takes it out
    void take_out();                                       // what is open, and goes up

private:
    records::Json schema_, body_;
    std::vector<std::string> path_; // keys and places in lists
};

} // namespace cotter::ui
