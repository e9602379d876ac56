using System.Globalization;
using Pattress.Papers.Documents;

namespace Pattress.Pdf.Layout;

/// <summary>Sets lists: a dot, a number or a box to tick, then the entry.</summary>
internal sealed class ListSetter(Flow flow)
{
    private const double IndentMm = 6, AfterEntryMm = 0.9;

    public void Set(Listing list)
    {
        if (list.Entries.Count == 0) return;
        flow.Add(new Open(Role.List));
        for (int i = 0; i < list.Entries.Count; i++) Entry(list.Entries[i], i, list.Bullet);
        flow.Add(new Close());
        flow.Y += 1;
    }

    private void Entry(string text, int index, Bullet bullet)
    {
        var letters = Letters.Body;
        var lines = letters.Lines(text, flow.Width - IndentMm);
        flow.Need(lines.Count * letters.LineMm);
        flow.Add(new Open(Role.Item));
        Mark(index, bullet, letters);
        flow.Add(new Open(Role.Body));
        foreach (string line in lines)
        {
            flow.Add(new Run(flow.Left + IndentMm, flow.Y + letters.BaseMm, line, letters.Face, letters.SizePt));
            flow.Y += letters.LineMm;
        }
        flow.Add(new Close());
        flow.Add(new Close());
        flow.Y += AfterEntryMm;
    }

    private void Mark(int index, Bullet bullet, Letters letters)
    {
        if (bullet == Bullet.Box)
        {
            flow.Aside(new Frame(flow.Left, flow.Y + letters.BaseMm - 2.9, 3.2, 3.2, 0.25));
            return;
        }
        string mark = bullet == Bullet.Dot ? "•" : (index + 1).ToString(CultureInfo.InvariantCulture) + ".";
        flow.Add(new Open(Role.Label));
        flow.Add(new Run(flow.Left + (bullet == Bullet.Dot ? 1.5 : 0), flow.Y + letters.BaseMm, mark, letters.Face, letters.SizePt));
        flow.Add(new Close());
    }
}
