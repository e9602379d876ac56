using Pattress.Papers.Documents;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Pattress.Pdf.Fonts;

/// <summary>One of the two faces that papers are set in, embedded under the Open Font License (Fonts/OFL.txt).</summary>
internal sealed class Face
{
    /// <summary>Stands for a letter that the font does not have.</summary>
    private const char Missing = '?';

    private static readonly XPdfFontOptions Unicode = new(PdfFontEncoding.Unicode);
    private static readonly Dictionary<char, string> Instead = new()
    {
        ['\u00A0'] = " ", ['α'] = "alpha", ['β'] = "beta", ['γ'] = "gamma", ['δ'] = "delta", ['ε'] = "epsilon", ['η'] = "eta", ['θ'] = "theta", ['λ'] = "lambda", ['μ'] = "mu", ['ν'] = "nu",
        ['ξ'] = "xi", ['π'] = "pi", ['ρ'] = "rho", ['σ'] = "sigma", ['τ'] = "tau", ['φ'] = "phi", ['ϕ'] = "phi", ['χ'] = "chi", ['ψ'] = "psi", ['ω'] = "omega", ['Δ'] = "Delta", ['Ω'] = "Omega", ['Φ'] = "Phi",
        ['≤'] = "<=", ['≥'] = ">=", ['≠'] = "<>", ['≈'] = "about", ['∞'] = "infinite",
    };

    private readonly Dictionary<double, XFont> _sizes = [];
    private readonly FontTable _table;
    private readonly bool _bold;

    private Face(string name, bool bold) => (_table, _bold) = (new FontTable(Resolver.File(name)), bold);

    public static Face Regular { get; } = new("regular", false);

    public static Face Bold { get; } = new("bold", true);

    /// <summary>Width of a text, mm.</summary>
    public double WidthMm(string text, double sizePt) => _table.Width(text, sizePt) * Units.MmPerPt;

    /// <summary>The text with what the font cannot show replaced: a Greek letter by its name, a sign by what stands for it.</summary>
    public string Shown(string text) => text.All(c => _table.Has(c)) || text == Table.Tick ? text : string.Concat(text.Select(Replaced));

    private string Replaced(char c) => _table.Has(c) ? c.ToString() : Instead.TryGetValue(c, out string? name) ? name : Missing.ToString();

    public bool Has(char letter) => _table.Has(letter);

    /// <summary>The font at a size, pt.</summary>
    public XFont At(double sizePt)
    {
        if (_sizes.TryGetValue(sizePt, out var font)) return font;
        return _sizes[sizePt] = new XFont(Resolver.Family, sizePt, _bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, Unicode);
    }

    /// <summary>Hands PDFsharp the embedded files, and never a font of the system.</summary>
    internal sealed class Resolver : IFontResolver
    {
        public const string Family = "Pattress papers";

        public static byte[] File(string name)
        {
            using var stream = typeof(Resolver).Assembly.GetManifestResourceStream(name) ?? throw new ArgumentException($"no font '{name}'", nameof(name));
            byte[] file = new byte[stream.Length];
            stream.ReadExactly(file);
            return file;
        }

        public byte[] GetFont(string faceName) => File(faceName);

        public FontResolverInfo ResolveTypeface(string familyName, bool bold, bool italic) => new(bold ? "bold" : "regular");
    }
}
