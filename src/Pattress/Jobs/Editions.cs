namespace Pattress.Jobs;

/// <summary>Which edition of each document a job is held to. A document that only stands in where the set's own says nothing may be <c>none</c>.</summary>
public sealed record Editions
{
    /// <summary>In place of an edition: the document is not used.</summary>
    public const string None = "none";

    /// <summary>EN 1995-1-1.</summary>
    public string Timber { get; init; } = "2004+A1:2008";

    /// <summary>The draft prEN 1995-1-1, for screws thinner than 6 mm.</summary>
    public string TimberDraft { get; init; } = "2023";

    /// <summary>EN 1993-1-3.</summary>
    public string ThinSteel { get; init; } = "2006";

    /// <summary>EN 1992-4.</summary>
    public string Concrete { get; init; } = "2018";

    /// <summary>EN 520.</summary>
    public string Board { get; init; } = "2004+A1:2009";

    /// <summary>NDS: the American timber standard, and a stand-in for thin screws.</summary>
    public string Nds { get; init; } = "2018";

    /// <summary>AISI S100: the American thin-steel standard, and a stand-in for thin studs.</summary>
    public string Aisi { get; init; } = "2016";

    /// <summary>ASTM C1396.</summary>
    public string AmericanBoard { get; init; } = "2017";

    /// <summary>Field names, documents and what each may be.</summary>
    internal static readonly IReadOnlyList<(string Field, Func<Editions, string> Of, Func<Editions, string, Editions> With, string[] Allowed)> Fields =
    [
        ("en1995_1_1", e => e.Timber, (e, v) => e with { Timber = v }, ["2004+A1:2008"]),
        ("pren1995_1_1", e => e.TimberDraft, (e, v) => e with { TimberDraft = v }, ["2023", None]),
        ("en1993_1_3", e => e.ThinSteel, (e, v) => e with { ThinSteel = v }, ["2006"]),
        ("en1992_4", e => e.Concrete, (e, v) => e with { Concrete = v }, ["2018"]),
        ("en520", e => e.Board, (e, v) => e with { Board = v }, ["2004+A1:2009"]),
        ("nds", e => e.Nds, (e, v) => e with { Nds = v }, ["2018", None]),
        ("aisi_s100", e => e.Aisi, (e, v) => e with { Aisi = v }, ["2016", None]),
        ("astm_c1396", e => e.AmericanBoard, (e, v) => e with { AmericanBoard = v }, ["2017"]),
    ];
}
