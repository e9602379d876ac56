using Pattress.Jobs;

namespace Pattress.Papers.Drawings;

/// <summary>What every drawer needs: the scale, the letters' height, the words, and where the marks go.</summary>
internal sealed class Sheet(double pxPerMm, double textPx, Say say)
{
    private readonly List<Group> _groups = [];

    public Say Say { get; } = say;

    public double PxPerMm { get; } = pxPerMm;

    /// <summary>Height of a letter, mm on the drawing.</summary>
    public double TextMm { get; } = textPx / pxPerMm;

    public IReadOnlyList<Group> Groups => _groups;

    /// <summary>A size that stays the same on screen whatever the scale.</summary>
    public double Px(double px) => px / PxPerMm;

    public void Add(string cssClass, string titleCode, IReadOnlyList<Mark> marks)
    {
        if (marks.Count > 0) _groups.Add(new Group(cssClass, Words(titleCode), marks));
    }

    public string Words(string code, params IReadOnlyList<Said> values) => Say(new Reason(code, values));

    public string Length(double mm) => Words("draw_length", Said.Length(mm));

    public string Name(string id) => Words("draw_name", Said.Name(id));

    public string Place(Point at) => Words("draw_place", Said.Length(at.X), Said.Length(at.Y));

    public string Percent(double fraction) => Words("draw_percent", Said.Percent(fraction));
}
