using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Web.Desks;

/// <summary>The text layer for the job on the desk: its English and its units.</summary>
public sealed class Words(Desk desk)
{
    public string Say(Reason reason) => Texts.Sentence(reason, desk.Job.Settings);

    /// <summary>What is wrong, with names and words for where: the path in the document is for a fold.</summary>
    /// <param name="of">The job that the problem is in; null where it was not read.</param>
    public string Problem(Problem problem, Job? of) => Texts.Plainly(problem, of, desk.Job.Settings);

    /// <summary>A number of a calculation, as far as it is worth reading.</summary>
    public string Figure(double value) => double.IsFinite(value) ? Shows.ThreeFigures(value) : "";

    /// <summary>Five figures, for the numbers put into a formula.</summary>
    public string InWorking(double value) => Shows.FiveFigures(value);
}
