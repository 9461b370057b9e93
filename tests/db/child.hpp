#pragma once

// Another process, which does something with a book and is waited for.

#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

#include <stdexcept>

namespace cotter::tests {

// Runs `act` in a child that ends without any clearing up; gives its exit code. A signal is 256 and more.
template <class Act> int in_child(Act act)
{
    const pid_t child = ::fork();
    if (child < 0)
        throw std::runtime_error{"no child"};
    if (child == 0) {
        try {
            act();
        } catch (...) {
            ::_exit(99);
        }
        ::_exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 256 + WTERMSIG(status);
}

// A child that does `hold`, says so, and keeps what it holds until this goes out of scope.
class Holder {
public:
    template <class Hold> explicit Holder(Hold hold)
    {
        if (::pipe(ready_) != 0 || ::pipe(leave_) != 0)
            throw std::runtime_error{"no pipe"};
        child_ = ::fork();
        if (child_ == 0) {
            ::close(leave_[1]);
            const auto held = hold();
            char sign = 'h';
            static_cast<void>(!::write(ready_[1], &sign, 1));
            static_cast<void>(!::read(leave_[0], &sign, 1));
            ::_exit(held ? 0 : 1);
        }
        char sign = 0;
        static_cast<void>(!::read(ready_[0], &sign, 1));
    }
    Holder(const Holder&) = delete;
    Holder& operator=(const Holder&) = delete;
    ~Holder()
    {
        ::close(leave_[1]);
        ::waitpid(child_, nullptr, 0);
        for (const int end : {ready_[0], ready_[1], leave_[0]})
            ::close(end);
    }

private:
    int ready_[2]{}, leave_[2]{};
    pid_t child_ = 0;
};

} // namespace cotter::tests
