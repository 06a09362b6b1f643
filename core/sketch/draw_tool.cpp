#include "sketch/draw_tool.h"

#include <algorithm>
#include <array>

#include "plan/edits.h"
#include "sketch/defaults.h"
#include "sketch/kinds.h"
#include "sketch/words.h"

namespace sketch {

Edit drawn(Hand hand, const plan::Job& job, plan::Kind kind) {
  plan::Element element{plan::free_id(job, kind), {}, std::move(kind)};
  const plan::ElementId id = element.id;
  return {plan::with(job, std::move(element)), "Draw " + drawn_noun(hand) + " " + id, {id}};
}

std::string drawn_noun(Hand hand) {
  if (hand == Hand::dimension) return "dimension";
  const Drawing* found = drawing(hand);
  return found ? found->noun : std::string();
}

namespace {

struct FormWord {
  Form form;
  const char* id;
  const char* label;
};
constexpr std::array form_words{FormWord{Form::outline, "as-outline", words::as_outline},
                                FormWord{Form::line, "as-line", words::as_line},
                                FormWord{Form::point, "as-point", words::as_point}};

class DrawTool : public Tool {
 public:
  explicit DrawTool(const Drawing& drawing)
      : drawing_(drawing), form_(drawing.forms.front()), shaper_(form_ == Form::outline) {}

  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* chosen = std::get_if<Chosen>(&event)) {
      if (take_word(chosen->id)) return {};
      if (const auto form = form_of(chosen->id)) return take_form(*form);
    }
    const bool press = std::holds_alternative<Pressed>(event);
    const Shaper::Step step = shaper_.take(event, scene);
    // A point is the shaper's first point.
    if (form_ == Form::point && shaper_.busy()) return point(scene);
    if (form_ == Form::point && press) return {{}, {}, step.refused, false};
    if (step.done)
      return {drawn(drawing_.hand, scene.job, fresh(drawing_.hand, scene.job, {*step.done, {}}, what(scene.job))),
              {},
              {},
              false};
    return {{}, {}, step.refused, step.leave};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = drawing_.label;
    for (const What& one : drawing_.whats)
      view.choices.push_back({one.word, one.label, what(scene.job) == one.word, false});
    if (drawing_.forms.size() > 1)
      for (const Form form : drawing_.forms) view.choices.push_back(form_choice(form));
    shaper_.show(view, scene);
    if (form_ == Form::point) drop_ways(view);
    if (!shaper_.busy()) view.wants = form_ == Form::point ? words::click_place : drawing_.begin;
    return view;
  }

 private:
  std::string what(const plan::Job& job) const {
    if (!what_.empty() || drawing_.whats.empty()) return what_;
    const std::string before = last_what(drawing_.hand, job);
    return before.empty() ? drawing_.whats.front().word : before;
  }

  bool take_word(const std::string& id) {
    if (std::ranges::none_of(drawing_.whats, [&](const What& one) { return id == one.word; })) return false;
    what_ = id;
    return true;
  }

  std::optional<Form> form_of(const std::string& id) const {
    for (const FormWord& one : form_words)
      if (id == one.id && std::ranges::find(drawing_.forms, one.form) != drawing_.forms.end()) return one.form;
    return {};
  }

  Answer take_form(Form form) {
    if (form == form_) return {};
    if (shaper_.busy())
      return {{},
              {},
              problem::Problem{
                  problem::Severity::problem, "shape-unfinished", words::finish_first, words::finish_first_mend, {}},
              false};
    form_ = form;
    shaper_.close(form == Form::outline);
    return {};
  }

  Answer point(const Scene& scene) {
    const Made made{{}, *shaper_.first()};
    shaper_.drop();
    return {drawn(drawing_.hand, scene.job, fresh(drawing_.hand, scene.job, made, what(scene.job))), {}, {}, false};
  }

  Choice form_choice(Form form) const {
    const auto* word = std::ranges::find(form_words, form, &FormWord::form);
    return {word->id, word->label, form == form_, false};
  }

  static void drop_ways(View& view) {
    std::erase_if(view.choices, [](const Choice& one) { return shape_way(one.id) || edge_way(one.id); });
  }

  const Drawing& drawing_;
  Form form_;
  Shaper shaper_;
  std::string what_;  // as chosen; empty: that of the last one in the job
};

}  // namespace

std::unique_ptr<Tool> draw_tool(Hand hand) {
  const Drawing* found = drawing(hand);
  if (!found) return nullptr;
  return std::make_unique<DrawTool>(*found);
}

}  // namespace sketch
