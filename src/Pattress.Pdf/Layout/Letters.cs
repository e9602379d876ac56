using Pattress.Pdf.Fonts;

namespace Pattress.Pdf.Layout;

/// <summary>Letters of one size and face, and how they are broken into lines.</summary>
internal sealed record Letters(Face Face, double SizePt, bool Faint = false)
{
    public static Letters Body { get; } = new(Face.Regular, 9.5);

    public static Letters Strong { get; } = new(Face.Bold, 9.5);

    public static Letters Lead { get; } = new(Face.Regular, 11.5);

    public static Letters Note { get; } = new(Face.Regular, 8.5, true);

    public static Letters Cell { get; } = new(Face.Regular, 8.5);

    public static Letters CellHead { get; } = new(Face.Bold, 8.5);

    /// <summary>From one base line to the next, mm.</summary>
    public double LineMm => SizePt * 1.34 * Units.MmPerPt;

    /// <summary>From the head of a line to its base line, mm.</summary>
    public double BaseMm => SizePt * 1.0 * Units.MmPerPt;

    public double WidthMm(string text) => Face.WidthMm(text, SizePt);

    /// <summary>The text in lines no wider than so much; a word that is wider is broken.</summary>
    public IReadOnlyList<string> Lines(string text, double widthMm)
    {
        var lines = new List<string>();
        foreach (string part in text.Split('\n')) Break(Face.Shown(part), widthMm, lines);
        return lines;
    }

    private void Break(string text, double widthMm, List<string> lines)
    {
        string line = "";
        foreach (string word in text.Split(' ').SelectMany(w => Pieces(w, widthMm)))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length == 0 || WidthMm(longer) <= widthMm) { line = longer; continue; }
            lines.Add(line);
            line = word;
        }
        lines.Add(line);
    }

    private IEnumerable<string> Pieces(string word, double widthMm)
    {
        while (word.Length > 1 && WidthMm(word) > widthMm)
        {
            int n = 1;
            while (n < word.Length - 1 && WidthMm(word[..(n + 1)]) <= widthMm) n++;
            yield return word[..n];
            word = word[n..];
        }
        yield return word;
    }
}
