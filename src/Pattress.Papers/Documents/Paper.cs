using Pattress.Working;

namespace Pattress.Papers.Documents;

/// <summary>A paper: what it says, block by block. How it is set on pages is the renderer's.</summary>
/// <param name="Id">Short text, e.g. <c>job-sheet</c>; also the name of its file.</param>
/// <param name="Language">Language tag, e.g. <c>en-GB</c>.</param>
/// <param name="Foot">Stands at the foot of each page, before its number.</param>
/// <param name="PageOf">Words of the page number: {0} this page, {1} of how many.</param>
public sealed record Paper(string Id, string Title, string Language, PaperSize Size, string Foot, string PageOf, IReadOnlyList<Block> Blocks);

/// <summary>A part of a paper, set below the one before it.</summary>
public abstract record Block;

/// <param name="Level">1 for the paper's own, 2 and 3 below it.</param>
public sealed record Heading(string Text, int Level = 2) : Block;

/// <summary>How a paragraph looks. <c>Boxed</c> has a frame: it must not be overlooked.</summary>
public enum Voice { Plain, Lead, Note, Boxed }

public sealed record Paragraph(string Text, Voice Voice = Voice.Plain) : Block;

/// <summary>What stands before each entry of a list. <c>Box</c> is an empty box to tick.</summary>
public enum Bullet { Dot, Number, Box }

public sealed record Listing(IReadOnlyList<string> Entries, Bullet Bullet = Bullet.Dot) : Block;

/// <param name="Share">Share of the width; the shares of a table need not sum to one.</param>
public sealed record Column(string Head, double Share, bool Right = false);

/// <summary>A table; an empty cell of a <paramref name="Tall"/> table has room to write in, a cell of <see cref="Tick"/> has a box to tick.</summary>
public sealed record Table(string Caption, IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, bool Tall = false) : Block
{
    public const string Tick = "\u2610";

    /// <summary>Cells that hold a formula, line by line, by row and column; their text says the same to a reader that cannot draw it.</summary>
    public IReadOnlyDictionary<(int Row, int Column), IReadOnlyList<Setting>> Formulas { get; init; } = new Dictionary<(int, int), IReadOnlyList<Setting>>();
}

/// <summary>Drawings side by side as far as they fit, at the size that they were made for.</summary>
public sealed record Pictures(IReadOnlyList<Drawings.Drawing> Drawings) : Block;

/// <summary>A drawing at its true size, on as many pages of its own as it needs.</summary>
/// <param name="Says">Words that stand on each of its pages.</param>
public sealed record TrueSize(Drawings.Drawing Drawing, string Heading, TrueSizeWords Says) : Block;

/// <summary>What each page of a true-size drawing says.</summary>
/// <param name="Check">How to check that it was printed at full size.</param>
/// <param name="Tile">Which part it is: {0} column, {1} of, {2} row, {3} of.</param>
/// <param name="Join">How to put the parts together.</param>
/// <param name="Inches">Words of a second line of 4 in beside that of 100 mm; empty in metric jobs.</param>
public sealed record TrueSizeWords(string Check, string Tile, string Join, string HundredMm, string Inches);

/// <summary>A line to write on, with what belongs there.</summary>
public sealed record WriteOn(string Label, string Filled = "") : Block;

/// <summary>Room for a signature; strokes that were made on the glass are drawn, each point within 0 to 1000 across and 0 to 1000 down the frame.</summary>
public sealed record SignHere(string Label, IReadOnlyList<IReadOnlyList<Jobs.Point>> Strokes) : Block;

/// <summary>A label to cut out and stick on: few words, large.</summary>
public sealed record CutOut(string Large, IReadOnlyList<string> Small) : Block;

/// <summary>What follows begins a page.</summary>
public sealed record NewPage : Block;
