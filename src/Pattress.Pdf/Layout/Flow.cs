using Pattress.Papers.Documents;

namespace Pattress.Pdf.Layout;

/// <summary>One page: its ink in the order of reading.</summary>
internal sealed class Leaf
{
    public List<Ink> Ink { get; } = [];

    public void Add(Ink ink) => Ink.Add(ink);
}

/// <summary>Where the next thing is set: a page, and how far down. Begins a page where room is wanted and none is left.</summary>
internal sealed class Flow
{
    /// <summary>Margins above and below what is written, mm; the foot stands in the lower one.</summary>
    public const double TopMm = 16, FootMm = 18;

    private readonly PaperSize _size;

    public Flow(PaperSize size)
    {
        _size = size;
        Turn();
    }

    public List<Leaf> Pages { get; } = [];

    public Leaf Page => Pages[^1];

    /// <summary>mm from the upper edge of the page.</summary>
    public double Y { get; set; }

    public double Left => PaperSize.MarginMm;

    public double Width => _size.ContentMm;

    public double Bottom => _size.HeightMm - FootMm;

    public bool AtTop => Y <= TopMm;

    /// <summary>Begins a page.</summary>
    public void Turn()
    {
        Pages.Add(new Leaf());
        Y = TopMm;
    }

    /// <summary>Begins a page unless so much room is left here. True when it did.</summary>
    public bool Need(double heightMm)
    {
        if (AtTop || Y + heightMm <= Bottom) return false;
        Turn();
        return true;
    }

    /// <summary>White, but none at the head of a page.</summary>
    public void Gap(double mm)
    {
        if (!AtTop) Y += mm;
    }

    public void Add(Ink ink) => Page.Add(ink);

    /// <summary>Ink that belongs to no element: lines and repetitions that a reader is not told.</summary>
    public void Aside(params IReadOnlyList<Ink> ink)
    {
        Add(new Open(Role.Aside));
        foreach (var one in ink) Add(one);
        Add(new Close());
    }
}
