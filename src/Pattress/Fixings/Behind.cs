namespace Pattress.Fixings;

/// <summary>What a hole meets behind the face. The names are those of <c>data/fixings/kinds.csv</c>, column <c>into</c>.</summary>
public enum Behind
{
    BoardVoid, BoardFoam, BoardDabGap, LathVoid, PanelVoid, Masonry, MasonryBehindGap, Aerated, Dab, Timber, SteelStud, SteelLintel,
}

/// <summary>Names of <see cref="Behind"/> as the data files write them.</summary>
public static class BehindNames
{
    private static readonly string[] Names =
        ["board_void", "board_foam", "board_dab_gap", "lath_void", "panel_void", "masonry", "masonry_behind_gap", "aerated", "dab", "timber", "steel_stud", "steel_lintel"];

    private static readonly string[] Keys = [.. Names.Select(n => "behind." + n)];

    public static string Name(this Behind behind) => Names[(int)behind];

    /// <summary>Key of its words in the text layer: <c>behind.</c> and the name.</summary>
    public static string Key(this Behind behind) => Keys[(int)behind];

    /// <exception cref="FormatException">The data file holds a word that is none of the names.</exception>
    public static Behind Parse(string name) =>
        Array.IndexOf(Names, name) is var i && i >= 0 ? (Behind)i : throw new FormatException($"unknown base '{name}'");
}
