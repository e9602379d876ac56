namespace Pattress.Mutants;

/// <summary>One change of the source. Number 0 is the planted one: every double that an arrow returns becomes NaN.</summary>
internal sealed record Mutant(int Id, string File, int Line, string Change, string Code)
{
    internal string Row => string.Join('\t', Id, File, Line, Change, Code);

    internal static Mutant Read(string row)
    {
        string[] p = row.Split('\t');
        return new(int.Parse(p[0]), p[1], int.Parse(p[2]), p[3], p[4]);
    }
}
