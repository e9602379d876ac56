using Pattress.Jobs;

namespace Pattress.Web.Parts;

/// <summary>Something on a drawing that can be moved.</summary>
/// <param name="Letter">What stands on it.</param>
/// <param name="Label">What a screen reader says of it.</param>
/// <param name="Shape">What moves with it, mm, or null for the grip alone.</param>
public sealed record Handle(string Id, Point At, string Letter, string Label, Rect? Shape);

/// <summary>A handle was moved to a place on the wall.</summary>
/// <param name="Gesture">Counts the gestures on this drawing: what one did is undone together.</param>
public sealed record Moved(string Id, Point At, string Gesture);
