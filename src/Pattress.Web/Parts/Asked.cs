using Pattress.Jobs;

namespace Pattress.Web.Parts;

/// <summary>Opens the keys for a reading of this kind at this place.</summary>
public delegate void Asked(Point at, string kind);
