using Pattress.Papers.Documents;
using Pattress.Pdf.Layout;
using Pattress.Pdf.Press;

namespace Pattress.Pdf;

/// <summary>Writes papers as PDF: tagged, its text selectable, its fonts embedded. The same paper gives the same bytes.</summary>
public static class PdfPapers
{
    // PDFsharp keeps fonts in tables of the process.
    private static readonly Lock OneAtATime = new();

    /// <summary>The file of a paper.</summary>
    /// <param name="made">Date of the document; the clock is the caller's.</param>
    public static byte[] Write(Paper paper, DateTimeOffset made)
    {
        lock (OneAtATime)
        {
            var flow = new Flow(paper.Size);
            new Typesetter(flow, paper.Size).Set(paper.Blocks);
            return Fixed.Ids(Printer.Print(paper, flow.Pages, made), paper.Id);
        }
    }

    /// <summary>How many pages a paper has.</summary>
    public static int Pages(Paper paper)
    {
        var flow = new Flow(paper.Size);
        new Typesetter(flow, paper.Size).Set(paper.Blocks);
        return flow.Pages.Count;
    }
}
