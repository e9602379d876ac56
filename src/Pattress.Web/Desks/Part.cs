using Pattress.Jobs;

namespace Pattress.Web.Desks;

/// <summary>An opening, service or zone while it is edited.</summary>
/// <param name="Face">Services: which face of the wall it is on.</param>
public sealed record Part(string Id, string Kind, Rect Area, string Face = "this");
