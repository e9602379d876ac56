using Pattress.Papers.Documents;
using Pattress.Pdf.Fonts;

namespace Pattress.Pdf.Layout;

/// <summary>Sets the blocks of a paper one below the other.</summary>
internal sealed class Typesetter(Flow flow, PaperSize size)
{
    private const double AfterMm = 1.6, SignatureMm = 24, WriteOnMm = 5, BeforeSignatureMm = 3, BelowSignatureMm = 0.8;

    public void Set(IReadOnlyList<Block> blocks)
    {
        for (int i = 0; i < blocks.Count; i++)
        {
            if (IsToSign(blocks[i]) && (i == 0 || !IsToSign(blocks[i - 1]))) flow.Need(blocks.Skip(i).TakeWhile(IsToSign).Sum(ToSignMm));
            Set(blocks[i], i + 1 < blocks.Count ? blocks[i + 1] : null);
        }
    }

    /// <summary>Lines to write on and signatures that follow each other stay on one page: the last of them is not left alone on the next.</summary>
    private static bool IsToSign(Block block) => block is Papers.Documents.WriteOn or Papers.Documents.SignHere;

    private double ToSignMm(Block block) => block is Papers.Documents.SignHere sign
        ? BeforeSignatureMm + SignatureMm + BelowSignatureMm + Letters.Note.Lines(sign.Label, flow.Width).Count * Letters.Note.LineMm + AfterMm
        : WriteOnMm + Letters.Body.LineMm + AfterMm;

    private void Set(Block block, Block? next)
    {
        switch (block)
        {
            case Heading b: Heading(b, next); break;
            case Paragraph b: Paragraph(b); break;
            case Listing b: new ListSetter(flow).Set(b); break;
            case Table b: new TableSetter(flow).Set(b); break;
            case Pictures b: new PictureSetter(flow).Set(b); break;
            case TrueSize b: new TileSetter(flow, size).Set(b); break;
            case WriteOn b: WriteOn(b); break;
            case SignHere b: SignHere(b); break;
            case CutOut b: new CutOutSetter(flow).Set(b); break;
            case NewPage: flow.Turn(); break;
            default: throw new ArgumentException($"no way to set {block.GetType().Name}", nameof(block));
        }
    }

    private void Heading(Heading heading, Block? next)
    {
        var (letters, role, before) = heading.Level switch
        {
            1 => (new Letters(Face.Bold, 18), Role.H1, 0.0),
            2 => (new Letters(Face.Bold, 13), Role.H2, 5.0),
            _ => (new Letters(Face.Bold, 10.5), Role.H3, 3.0),
        };
        var lines = letters.Lines(heading.Text, flow.Width);
        // A heading stays with the beginning of what it heads.
        flow.Need(before + lines.Count * letters.LineMm + Least(next));
        flow.Gap(before);
        Text(lines, letters, role);
        flow.Y += AfterMm;
    }

    private double Least(Block? next) => next switch
    {
        Pictures p => PictureSetter.FirstRowMm(p, flow.Width),
        Table t => TableSetter.LeastMm(t, flow.Width),
        Heading h => 8 + (h.Level == 3 ? 24 : 30),
        TrueSize => 0,
        null => 0,
        _ => 14,
    };

    private void Text(IReadOnlyList<string> lines, Letters letters, Role role)
    {
        flow.Add(new Open(role));
        Ink(lines, letters, flow.Left);
        flow.Add(new Close());
    }

    private void Ink(IReadOnlyList<string> lines, Letters letters, double x)
    {
        foreach (string line in lines)
        {
            flow.Add(new Run(x, flow.Y + letters.BaseMm, line, letters.Face, letters.SizePt, letters.Faint));
            flow.Y += letters.LineMm;
        }
    }

    private void Paragraph(Paragraph paragraph)
    {
        if (paragraph.Voice == Voice.Boxed) { Boxed(paragraph.Text); return; }
        var letters = paragraph.Voice switch { Voice.Lead => Letters.Lead, Voice.Note => Letters.Note, _ => Letters.Body };
        var lines = letters.Lines(paragraph.Text, flow.Width);
        flow.Need(lines.Count * letters.LineMm);
        Text(lines, letters, Role.Paragraph);
        flow.Y += AfterMm;
    }

    private void Boxed(string text)
    {
        const double pad = 2;
        var letters = Letters.Strong;
        var lines = letters.Lines(text, flow.Width - 2 * pad);
        double height = lines.Count * letters.LineMm + 1.2 * pad, width = Math.Min(flow.Width, lines.Max(letters.WidthMm) + 2 * pad);
        flow.Need(height + 12);
        flow.Aside(new Frame(flow.Left, flow.Y, width, height, 0.45));
        flow.Add(new Open(Role.Paragraph));
        double end = flow.Y + height;
        flow.Y += pad * 0.6;
        Ink(lines, letters, flow.Left + pad);
        flow.Add(new Close());
        flow.Y = end + AfterMm;
    }

    private void WriteOn(WriteOn line)
    {
        flow.Need(11);
        flow.Y += WriteOnMm;
        double label = Letters.Body.WidthMm(Letters.Body.Face.Shown(line.Label)) + 2;
        flow.Add(new Open(Role.Paragraph));
        flow.Add(new Run(flow.Left, flow.Y + Letters.Body.BaseMm, Letters.Body.Face.Shown(line.Label), Letters.Body.Face, Letters.Body.SizePt));
        if (line.Filled.Length > 0) flow.Add(new Run(flow.Left + label + 2, flow.Y + Letters.Body.BaseMm, Letters.Strong.Face.Shown(line.Filled), Letters.Strong.Face, Letters.Strong.SizePt));
        flow.Add(new Close());
        flow.Aside(new Rule(flow.Left + label, flow.Y + Letters.Body.BaseMm + 0.8, flow.Left + flow.Width, flow.Y + Letters.Body.BaseMm + 0.8, 0.2));
        flow.Y += Letters.Body.LineMm + AfterMm;
    }

    private void SignHere(SignHere sign)
    {
        flow.Need(SignatureMm + 8);
        flow.Gap(BeforeSignatureMm);
        double width = Math.Min(90, flow.Width);
        flow.Add(new Open(Role.Figure, sign.Label, flow.Left, flow.Y, width, SignatureMm));
        flow.Add(new Rule(flow.Left, flow.Y + SignatureMm, flow.Left + width, flow.Y + SignatureMm, 0.25));
        foreach (var stroke in sign.Strokes.Where(s => s.Count > 1))
            flow.Add(new Trail([.. stroke.Select(p => (flow.Left + p.X / 1000 * width, flow.Y + p.Y / 1000 * SignatureMm))], 0.4));
        flow.Add(new Close());
        flow.Y += SignatureMm + BelowSignatureMm;
        Text(Letters.Note.Lines(sign.Label, flow.Width), Letters.Note, Role.Paragraph);
        flow.Y += AfterMm;
    }
}
