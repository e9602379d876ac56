using Pattress.Papers.Drawings;
using Pattress.Pdf.Fonts;

namespace Pattress.Pdf.Layout;

/// <summary>Something on a page: a piece of its structure, or ink. Places are mm from the upper left corner of the page.</summary>
internal abstract record Ink;

/// <summary>Opens an element of the document's structure.</summary>
/// <param name="Alt">What a picture shows, for those who do not see it.</param>
internal sealed record Open(Role Role, string Alt = "", double X = 0, double Y = 0, double Width = 0, double Height = 0) : Ink;

/// <summary>Closes the element opened last.</summary>
internal sealed record Close : Ink;

/// <summary>A run of text on its base line.</summary>
internal sealed record Run(double X, double Base, string Text, Face Face, double SizePt, bool Faint = false) : Ink;

/// <summary>A straight line.</summary>
internal sealed record Rule(double X1, double Y1, double X2, double Y2, double WidthMm, bool Dashed = false) : Ink;

/// <summary>A frame, not filled.</summary>
internal sealed record Frame(double X, double Y, double Width, double Height, double WidthMm) : Ink;

/// <summary>A line through points.</summary>
internal sealed record Trail(IReadOnlyList<(double X, double Y)> Points, double WidthMm) : Ink;

/// <summary>A drawing whose upper left corner lies at X, Y, seen through a window.</summary>
internal sealed record Drawn(Drawing Drawing, double X, double Y, double WindowX, double WindowY, double WindowWidth, double WindowHeight) : Ink;

/// <summary>What an element is.</summary>
internal enum Role { H1, H2, H3, Paragraph, List, Item, Label, Body, Table, Row, HeadCell, Cell, Figure, Aside }
