using Pattress.Jobs;
using Pattress.Jobs.Site;
using Pattress.Jobs.Text;
using Pattress.Papers.Documents;

namespace Pattress.Papers.Sheets;

/// <summary>Labels to cut out: what a thing carries. Only for what is ready; what is still to be checked has none.</summary>
internal static class LabelSheet
{
    public static IReadOnlyList<Block> Blocks(Words words)
    {
        var sheet = HandOverSheet.Of(words.Job, words.Plan);
        return [.. words.Head("labels"), new Paragraph(words.T("labels_lead"), Voice.Note), .. sheet.Rows.Select(r => Label(r, words)), .. Without(sheet, words)];
    }

    private static CutOut Label(HandOverRow row, Words words)
    {
        bool person = HandOverPaper.HoldsPerson(row, words);
        return new(
            person ? words.T("label_person") : words.T("label_carries", Said.Words(Shows.MassAtMost(row.CarriesKg, words.Settings))),
            [
                words.NameOf(words.Plan.Items.First(i => i.Id == row.Item)), words.T(person ? "label_tested" : "label_own_weight"),
                words.T("label_made", Said.Words(words.Date)), .. row.Look.Take(1).Select(words.Sentence),
            ]);
    }

    private static IEnumerable<Block> Without(HandOverSheet sheet, Words words)
    {
        if (sheet.Left.Count == 0) yield break;
        yield return new Heading(words.T("labels_without"), 3);
        yield return new Listing([.. sheet.Left.Select(l => words.Plan.Items.First(i => i.Id == l.Item)).Select(i => $"{words.Titled(i)}: {words.Verdict(i.Verdict)}")]);
    }
}
