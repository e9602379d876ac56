using Pattress.Jobs.Plans;
using Pattress.Jobs.Text;

namespace Pattress.Jobs.Repairs;

/// <summary>Ways to put something right as a document.</summary>
public static class RepairJson
{
    public static string Write(IReadOnlyList<RepairAnswer> ways, Settings settings) => JsonOut.Text(json =>
    {
        var says = new PlanWords(settings);
        json.WriteStartObject();
        json.WriteObjects("ways", ways, (j, way) =>
        {
            j.WriteString("way", way.Way);
            j.WriteString("verdict", Words.Of(way.Verdict));
            says.Write(j, way.Why);
            j.WriteMaybe("fixing", way.Fixing);
            j.WritePoint("at_mm", way.At);
            j.WriteNumber("minutes", way.Minutes);
            j.WriteNumber("wait_hours", way.WaitHours);
            j.WriteNumber("price", way.Price);
            j.WriteObjects("assumptions", way.Assumptions, says.Write);
        });
        json.WriteEndObject();
    });
}
