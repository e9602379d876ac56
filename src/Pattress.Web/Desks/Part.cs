using Pattress.Jobs;

namespace Pattress.Web.Desks;

/// <summary>An opening, service or zone while it is edited.</summary>
public sealed record Part(string Id, string Kind, Rect Area);
