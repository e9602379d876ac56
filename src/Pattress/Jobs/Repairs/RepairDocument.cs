using Pattress.Jobs.Checks;
using Pattress.Jobs.Doors;
using Pattress.Planning.Repairs;

namespace Pattress.Jobs.Repairs;

/// <summary>The question of what to do where a fixing came away, as a document: <c>{"job":{…},"item","bracket","hole_mm","torn","crushed"}</c>.</summary>
public static class RepairDocument
{
    private static readonly ObjectShape Shape = new(
        Field.Required("job", JobShapes.Document),
        Field.Required("item", new IdShape(), "The thing that hung there."),
        Field.Required("bracket", new IntegerShape(1, JobShapes.MostBrackets), "Its bracket, counted from 1."),
        Field.Required("hole_mm", JobShapes.Length(1, 200), "Width of the hole that is there now."),
        Field.Optional("torn", JobShapes.YesNo, "The paper is torn beyond the hole."),
        Field.Optional("crushed", JobShapes.YesNo, "The board is crushed around it."));

    /// <summary>The ways to put it right as JSON, or the problems of the document.</summary>
    public static Outcome<string> Answer(string json)
    {
        var read = Door.Read(json, Shape);
        if (read.Value is not { } entry) return Outcome<string>.Refused(read.Problems);
        var problems = new ProblemList();
        JobChecks.Run(entry["job"]!, problems);
        if (!problems.IsEmpty) return Outcome<string>.Refused(problems.Problems);
        var job = JobBuilder.Build(entry["job"]!);
        var remains = new Remains(entry.NumberOf("hole_mm"), JobBuilder.IsYes(entry, "torn"), JobBuilder.IsYes(entry, "crushed"));
        var ways = PuttingRight.Of(job, entry.TextOf("item"), (int)entry.NumberOf("bracket") - 1, remains, PlanData.Embedded);
        return ways.Count > 0 ? Outcome<string>.Of(RepairJson.Write(ways, job.Settings))
            : Outcome<string>.Refused(new Problem("wrong_words", entry["item"]!.Path.ToString(), entry.TextOf("item"), "a thing of the job and one of its brackets"));
    }
}
