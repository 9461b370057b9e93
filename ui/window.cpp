// The GLFW window and its loop: sleeps until something happens.

#include "window.hpp"

#include "redraw.hpp"
#include "texture.hpp"
#include "window_files.hpp"

#include <GLFW/glfw3.h>
#include <backends/imgui_impl_glfw.h>
#include <backends/imgui_impl_opengl3.h>

#include <algorithm>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace cotter::ui {

namespace {

constexpr double guessed_px_per_mm = 5.88; // a 10-inch tablet, where the monitor does not say

double px_per_mm_of_monitor()
{
    int width_mm = 0, height_mm = 0;
    GLFWmonitor* monitor = glfwGetPrimaryMonitor();
    const GLFWvidmode* mode = monitor ? glfwGetVideoMode(monitor) : nullptr;
    if (monitor)
        glfwGetMonitorPhysicalSize(monitor, &width_mm, &height_mm);
    const double said = width_mm > 0 && mode ? static_cast<double>(mode->width) / width_mm : 0;
    return 2 <= said && said <= 40 ? said : guessed_px_per_mm; // as --px-per-mm accepts
}

struct Events {
    Redraw redraw;
    std::vector<std::string> dropped;                // files, newest first
    std::optional<std::vector<std::string>> watched; // what the page of the last frame found in its folder
};

Events& events_of(GLFWwindow* window) { return *static_cast<Events*>(glfwGetWindowUserPointer(window)); }
Redraw& redraw_of(GLFWwindow* window) { return events_of(window).redraw; }

// Any event wakes the drawing; ImGui's own callbacks are called on by its backend.
void wake_on_events(GLFWwindow* window)
{
    glfwSetCursorPosCallback(window, [](GLFWwindow* w, double, double) { redraw_of(w).woken(); });
    glfwSetMouseButtonCallback(window, [](GLFWwindow* w, int, int, int) { redraw_of(w).woken(); });
    glfwSetScrollCallback(window, [](GLFWwindow* w, double, double) { redraw_of(w).woken(); });
    glfwSetKeyCallback(window, [](GLFWwindow* w, int key, int, int action, int) {
        redraw_of(w).woken();
        // A scanner presses and lets go of Enter within a frame; as a character it is not lost.
        if (action == GLFW_PRESS && (key == GLFW_KEY_ENTER || key == GLFW_KEY_KP_ENTER))
            ImGui::GetIO().AddInputCharacter('\r');
    });
    glfwSetDropCallback(window, [](GLFWwindow* w, int count, const char** paths) {
        for (int i = 0; i < count; ++i)
            events_of(w).dropped.insert(events_of(w).dropped.begin(), paths[i]);
        redraw_of(w).woken();
    });
    glfwSetWindowRefreshCallback(window, [](GLFWwindow* w) { redraw_of(w).woken(); });
    glfwSetFramebufferSizeCallback(window, [](GLFWwindow* w, int, int) { redraw_of(w).woken(); });
    glfwSetWindowFocusCallback(window, [](GLFWwindow* w, int) { redraw_of(w).woken(); });
}

class Glfw {
public:
    Glfw() : started_{glfwInit() == GLFW_TRUE} {}
    Glfw(const Glfw&) = delete;
    Glfw& operator=(const Glfw&) = delete;
    ~Glfw()
    {
        if (started_)
            glfwTerminate();
    }
    bool started() const { return started_; }

private:
    bool started_;
};

// As asked for; else so that it fits the display.
std::pair<int, int> size_for(const WindowFacts& facts)
{
    GLFWmonitor* monitor = glfwGetPrimaryMonitor();
    const GLFWvidmode* mode = monitor ? glfwGetVideoMode(monitor) : nullptr;
    if (facts.size_is_asked_for || !mode)
        return {facts.width, facts.height};
    return {std::min(facts.width, mode->width),
            mode->width < facts.width ? mode->height : std::min(facts.height, mode->height)};
}

class Window {
public:
    Window(const WindowFacts& facts, Events& events)
    {
        glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
        glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 0);
        const auto [width, height] = size_for(facts);
        window_ = glfwCreateWindow(width, height, "Cotter", nullptr, nullptr);
        if (!window_)
            return;
        glfwSetWindowSizeLimits(window_, 700, 480, GLFW_DONT_CARE, GLFW_DONT_CARE);
        glfwMakeContextCurrent(window_);
        glfwSwapInterval(1);
        glfwSetWindowUserPointer(window_, &events);
        wake_on_events(window_);
        ImGui::CreateContext();
        ImGui::GetIO().IniFilename = nullptr;
        ImGui_ImplGlfw_InitForOpenGL(window_, true);
        ImGui_ImplOpenGL3_Init("#version 130");
    }
    Window(const Window&) = delete;
    Window& operator=(const Window&) = delete;
    ~Window()
    {
        if (!window_)
            return;
        ImGui_ImplOpenGL3_Shutdown();
        ImGui_ImplGlfw_Shutdown();
        ImGui::DestroyContext();
        glfwDestroyWindow(window_);
    }
    GLFWwindow* handle() const { return window_; }

private:
    GLFWwindow* window_ = nullptr;
};

// The letters of another size are made between two frames.
void fit_looks(std::unique_ptr<Theme>& theme)
{
    if (theme->fits_looks())
        return;
    const double px_per_mm = theme->px_per_mm();
    ImGui::GetIO().Fonts->Clear();
    theme = std::make_unique<Theme>(px_per_mm);
    ImGui_ImplOpenGL3_DestroyFontsTexture();
    ImGui_ImplOpenGL3_CreateFontsTexture();
}

double draw_frame(GLFWwindow* window, App& app, const Theme& theme, const WindowFacts& facts)
{
    std::vector<Seen> seen;
    Spy spy;
    if (!facts.layout_file.empty())
        spy = [&](const Seen& each) { seen.push_back(each); };
    ImGui_ImplOpenGL3_NewFrame();
    ImGui_ImplGlfw_NewFrame();
    ImGui::GetIO().DeltaTime = std::min(ImGui::GetIO().DeltaTime, 0.1F);
    const double again_in = frame(app, theme, spy);
    int w = 0, h = 0;
    glfwGetFramebufferSize(window, &w, &h);
    glViewport(0, 0, w, h);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
    if (!facts.layout_file.empty())
        write_layout(facts.layout_file, seen);
    return again_in;
}

// Shows long work on the glass, once it is longer than a moment; not more often than people can see.
class Waiting {
public:
    Waiting(GLFWwindow* window, App& app, const Theme& theme, const WindowFacts& facts)
        : window_{window}, app_{app}, theme_{theme}, facts_{facts}
    {
    }
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;
    ~Waiting()
    {
        if (begun_)
            app_.end_work();
    }

    bool goes_on(const Work& work)
    {
        if (!std::exchange(begun_, true))
            app_.begin_work();
        if (glfwGetTime() < next_)
            return true;
        glfwPollEvents();
        app_.show_work(work);
        draw_frame(window_, app_, theme_, facts_);
        glfwSwapBuffers(window_);
        next_ = glfwGetTime() + again;
        return !app_.is_work_ended() && !(work.ends_with_window && glfwWindowShouldClose(window_) != 0);
    }

private:
    static constexpr double a_moment = 0.3, again = 0.1; // s
    GLFWwindow* window_;
    App& app_;
    const Theme& theme_;
    const WindowFacts& facts_;
    bool begun_ = false;
    double next_ = glfwGetTime() + a_moment;
};

void work_between_frames(GLFWwindow* window, App& app, const Theme& theme, const WindowFacts& facts, Redraw& redraw)
{
    if (!facts.between_frames)
        return;
    Waiting waiting{window, app, theme, facts};
    const Between did = facts.between_frames([&](const Work& work) { return waiting.goes_on(work); });
    if (did != Between::nothing)
        redraw.woken();
    if (did == Between::close)
        glfwSetWindowShouldClose(window, 1);
}

bool is_moving() { return ImGui::IsMouseDown(0) || is_key_down(ImGuiKey_Space) || is_key_down(ImGuiKey_Enter); }

// So long, or until something happens. A folder that is watched is looked at without drawing.
void sleep_for(GLFWwindow* window, double seconds, const Events& events, const Outside& outside)
{
    constexpr double look_again = 1; // s
    if (!events.watched)
        return glfwWaitEventsTimeout(seconds);
    while (seconds > 0 && !events.redraw.owes_a_frame() && glfwWindowShouldClose(window) == 0 &&
           outside.photos.found() == *events.watched) {
        glfwWaitEventsTimeout(std::min(seconds, look_again));
        seconds -= look_again;
    }
}

void loop(GLFWwindow* window, App& app, std::unique_ptr<Theme>& theme, const WindowFacts& facts, Events& events,
          const Outside& outside)
{
    Redraw& redraw = events.redraw;
    double again_in = 0;
    while (glfwWindowShouldClose(window) == 0) {
        const double wait = std::min(again_in, redraw.seconds_to_wait(is_moving(), outside.now()));
        if (wait > 0)
            sleep_for(window, wait, events, outside);
        else
            glfwPollEvents();
        fit_looks(theme);
        events.watched.reset();
        again_in = draw_frame(window, app, *theme, facts);
        redraw.drew();
        if (!facts.picture_file.empty() && !redraw.owes_a_frame()) {
            write_picture(window, facts.picture_file);
            return;
        }
        glfwSwapBuffers(window);
        work_between_frames(window, app, *theme, facts, redraw);
    }
}

} // namespace

bool has_display() { return Glfw{}.started(); }

bool run_window(const Outside& outside, Door door, const WindowFacts& facts)
{
    const Glfw glfw;
    if (!glfw.started())
        return false;
    Events events;
    const Window window{facts, events};
    if (!window.handle())
        return false;
    auto theme = std::make_unique<Theme>(facts.px_per_mm.value_or(px_per_mm_of_monitor()));
    Texture texture;
    Outside with = outside;
    with.texture = [&](const Picture& picture) { return texture.show(picture); };
    with.keep_drawing = [&] { events.redraw.woken(); };
    with.photos.watch = [&] {
        if (outside.photos.found)
            events.watched = outside.photos.found();
    };
    with.photos.found = [&] {
        std::vector<std::string> all = events.dropped;
        for (const std::string& each : outside.photos.found ? outside.photos.found() : std::vector<std::string>{})
            all.push_back(each);
        return all;
    };
    App app{with, door};
    loop(window.handle(), app, theme, facts, events, outside);
    return true;
}

} // namespace cotter::ui
